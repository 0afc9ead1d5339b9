/** A language of the page. */
interface LanguageFacts {
  /** The name that it has for itself. */
  readonly name: string;
  readonly decimalSign: '.' | ',';
  /** Whose lists and dates it has (BCP 47): in English without a comma before the last "and", the day first. */
  readonly locale: string;
  /** What stands between clauses: French has a space before it. */
  readonly semicolon: string;
  /** The unit of 10⁶ bytes: a French byte is an octet. */
  readonly megabyte: string;
}

/** The languages of the page, by their tags (BCP 47), in the order of their names. */
export const LANGUAGES = {
  de: {
    name: 'Deutsch',
    decimalSign: ',',
    locale: 'de',
    semicolon: '; ',
    megabyte: 'MB',
  },
  en: {
    name: 'English',
    decimalSign: '.',
    locale: 'en-GB',
    semicolon: '; ',
    megabyte: 'MB',
  },
  es: {
    name: 'Español',
    decimalSign: ',',
    locale: 'es',
    semicolon: '; ',
    megabyte: 'MB',
  },
  fr: {
    name: 'Français',
    decimalSign: ',',
    locale: 'fr',
    semicolon: '\u00a0; ',
    megabyte: 'Mo',
  },
  pl: {
    name: 'Polski',
    decimalSign: ',',
    locale: 'pl',
    semicolon: '; ',
    megabyte: 'MB',
  },
  'pt-BR': {
    name: 'Português (Brasil)',
    decimalSign: ',',
    locale: 'pt-BR',
    semicolon: '; ',
    megabyte: 'MB',
  },
} as const satisfies Readonly<Record<string, LanguageFacts>>;

export type Language = keyof typeof LANGUAGES;

export const LANGUAGE_TAGS = Object.keys(LANGUAGES) as readonly Language[];

/** The language in use: with its texts (`inUse.ts`) the one state at module level. */
export let language: Language;

/** For `speakFirst` alone: a language comes with its texts. */
export function setLanguage(chosen: Language): void {
  language = chosen;
}
