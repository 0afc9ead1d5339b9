/*
 * Polish: counts and their words.
 */

const PLURAL_RULES = new Intl.PluralRules('pl');

/**
 * The form of a word that goes with a count: 1 pomiar, 2 pomiary, 5 pomiarów.
 * @param few  with 2 to 4, 22 to 24 …
 * @param many  with 0, 5 to 21 …
 */
export function plural(count: number, one: string, few: string, many: string): string {
  switch (PLURAL_RULES.select(count)) {
    case 'one':
      return one;
    case 'few':
      return few;
    default:
      return many;
  }
}

/** A count with its word: 1 pomiar, 2 pomiary, 5 pomiarów. */
export function counted(count: number, one: string, few: string, many: string): string {
  return `${count} ${plural(count, one, few, many)}`;
}

/** 1., 2., 3. … */
export function ordinal(order: number): string {
  return `${order}.`;
}
