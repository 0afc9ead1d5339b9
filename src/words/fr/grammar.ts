/*
 * French: counts and their words.
 */

const PLURAL_RULES = new Intl.PluralRules('fr');

/** The form of a word that goes with a count; none is singular, too: 0 mesure, 1 mesure, 2 mesures. */
export function plural(count: number, one: string, other: string): string {
  return PLURAL_RULES.select(count) === 'one' ? one : other;
}

/** A count with its word: 1 mesure, 2 mesures. */
export function counted(count: number, one: string, other: string): string {
  return `${count} ${plural(count, one, other)}`;
}

/** 1re, 2e, 3e … of a feminine word, as résonance is. */
export function ordinal(order: number): string {
  return order === 1 ? '1re' : `${order}e`;
}
