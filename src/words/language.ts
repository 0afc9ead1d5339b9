/** A language of the page. */
interface LanguageFacts {
  /** The name that it has for itself. */
  readonly name: string;
  readonly decimalSign: '.' | ',';
  /** How its lists are written (BCP 47): in English without a comma before the last "and". */
  readonly lists: string;
}

/** The languages of the page, by their tags (BCP 47), in the order of their names. */
export const LANGUAGES = {
  de: { name: 'Deutsch', decimalSign: ',', lists: 'de' },
  en: { name: 'English', decimalSign: '.', lists: 'en-GB' },
  es: { name: 'Español', decimalSign: ',', lists: 'es' },
  fr: { name: 'Français', decimalSign: ',', lists: 'fr' },
  pl: { name: 'Polski', decimalSign: ',', lists: 'pl' },
  'pt-BR': { name: 'Português (Brasil)', decimalSign: ',', lists: 'pt-BR' },
} as const satisfies Readonly<Record<string, LanguageFacts>>;

export type Language = keyof typeof LANGUAGES;

export const LANGUAGE_TAGS = Object.keys(LANGUAGES) as readonly Language[];

/** The language in use: with its texts (`inUse.ts`) the one state at module level. */
export let language: Language;

/** For `speakFirst` alone: a language comes with its texts. */
export function setLanguage(chosen: Language): void {
  language = chosen;
}
