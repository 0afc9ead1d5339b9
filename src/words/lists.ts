import { LANGUAGES, language } from './language.ts';

/** "a, b or c", in the language in use. */
export function either(parts: readonly string[]): string {
  return joined(parts, 'disjunction');
}

/** "a, b and c", in the language in use. */
export function listed(parts: readonly string[]): string {
  return joined(parts, 'conjunction');
}

/** Clauses of one sentence, with semicolons between them. */
export function clauses(parts: readonly string[]): string {
  return parts.join(LANGUAGES[language].semicolon);
}

function joined(parts: readonly string[], type: 'conjunction' | 'disjunction'): string {
  return new Intl.ListFormat(LANGUAGES[language].locale, { type }).format(parts);
}
