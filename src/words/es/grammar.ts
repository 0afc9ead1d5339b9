/*
 * Spanish: counts and their words.
 */

const PLURAL_RULES = new Intl.PluralRules('es');

/** The form of a word that goes with a count: 1 medida, 2 medidas. */
export function plural(count: number, one: string, other: string): string {
  return PLURAL_RULES.select(count) === 'one' ? one : other;
}

/** A count with its word: 1 medida, 2 medidas. */
export function counted(count: number, one: string, other: string): string {
  return `${count} ${plural(count, one, other)}`;
}

/** 1.ª, 2.ª, 3.ª … of a feminine word, as resonancia is. */
export function ordinal(order: number): string {
  return `${order}.ª`;
}
