import { LANGUAGES, language } from './language.ts';

/** "a, b or c", in the language in use. */
export function either(parts: readonly string[]): string {
  return joined(parts, 'disjunction');
}

/** "a, b and c", in the language in use. */
export function listed(parts: readonly string[]): string {
  return joined(parts, 'conjunction');
}

function joined(parts: readonly string[], type: 'conjunction' | 'disjunction'): string {
  return new Intl.ListFormat(LANGUAGES[language].lists, { type }).format(parts);
}
