/*
 * English: counts and their words.
 */

/** 1st, 2nd, 3rd, 4th… */
export function ordinal(order: number): string {
  const suffix = ORDINAL_SUFFIXES[ORDINAL_RULES.select(order)];
  return `${order}${suffix}`;
}

const ORDINAL_RULES = new Intl.PluralRules('en', { type: 'ordinal' });
const ORDINAL_SUFFIXES = { zero: 'th', one: 'st', two: 'nd', few: 'rd', many: 'th', other: 'th' } as const;
const PLURAL_RULES = new Intl.PluralRules('en');

/**
 * The form of a word that goes with a count: 1 mark, 2 marks.
 * @param many  where it isn't the first form with an s
 */
export function plural(count: number, one: string, many = `${one}s`): string {
  return PLURAL_RULES.select(count) === 'one' ? one : many;
}

/** A count with its word: "1 degree", "2 degrees". @param many  as for `plural` */
export function counted(count: number, one: string, many?: string): string {
  return `${count} ${plural(count, one, many)}`;
}

/** "once", "2 times". */
export function times(count: number): string {
  return count === 1 ? 'once' : counted(count, 'time');
}
