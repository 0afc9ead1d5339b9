/*
 * German: counts and their words.
 */

const PLURAL_RULES = new Intl.PluralRules('de');

/** The form of a word that goes with a count: 1 Messung, 2 Messungen. */
export function plural(count: number, one: string, other: string): string {
  return PLURAL_RULES.select(count) === 'one' ? one : other;
}

/** A count with its word: 1 Messung, 2 Messungen. */
export function counted(count: number, one: string, other: string): string {
  return `${count} ${plural(count, one, other)}`;
}

/** 1., 2., 3. … */
export function ordinal(order: number): string {
  return `${order}.`;
}
