/*
 * Brazilian Portuguese: counts and their words.
 */

const PLURAL_RULES = new Intl.PluralRules('pt-BR');

/** The form of a word that goes with a count; none is singular, too: 0 medida, 1 medida, 2 medidas. */
export function plural(count: number, one: string, other: string): string {
  return PLURAL_RULES.select(count) === 'one' ? one : other;
}

/** A count with its word: 1 medida, 2 medidas. */
export function counted(count: number, one: string, other: string): string {
  return `${count} ${plural(count, one, other)}`;
}

/** 1ª, 2ª, 3ª … of a feminine word, as ressonância is. */
export function ordinal(order: number): string {
  return `${order}ª`;
}
