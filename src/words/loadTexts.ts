import type { FirstWords, LaterWords } from './catalogue.ts';
import type { Language } from './language.ts';

/** What loads a language's texts that are there from the start. */
export const FIRST_TEXTS: Readonly<Record<Language, () => Promise<FirstWords>>> = {
  de: () => import('./de/first.ts'),
  en: () => import('./en/first.ts'),
  es: () => import('./es/first.ts'),
  fr: () => import('./fr/first.ts'),
  pl: () => import('./pl/first.ts'),
  'pt-BR': () => import('./pt-BR/first.ts'),
};

/** What loads the rest of them. */
export const LATER_TEXTS: Readonly<Record<Language, () => Promise<LaterWords>>> = {
  de: () => import('./de/later.ts'),
  en: () => import('./en/later.ts'),
  es: () => import('./es/later.ts'),
  fr: () => import('./fr/later.ts'),
  pl: () => import('./pl/later.ts'),
  'pt-BR': () => import('./pt-BR/later.ts'),
};
