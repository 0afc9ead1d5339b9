import type { FirstWords, LaterWords } from './catalogue.ts';
import type { Language } from './language.ts';

/** What loads a language's texts that are there from the start. */
export const FIRST_TEXTS: Readonly<Record<Language, () => Promise<{ readonly first: FirstWords }>>> = {
  en: () => import('./en/first.ts'),
};

/** What loads the rest of them. */
export const LATER_TEXTS: Readonly<Record<Language, () => Promise<{ readonly later: LaterWords }>>> = {
  en: () => import('./en/later.ts'),
};
