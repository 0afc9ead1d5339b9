/**
 * Links hold lists instead of records: names would be longer than what they name. What comes out of one is unchecked;
 * `readExperiment` checks it.
 */

/** A list in a list; an empty one where there is none. */
export function listIn(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? (value as unknown[]) : [];
}

/** What a number in the list stands for; what is none stays as it is. */
export const nameAt = (names: readonly string[], value: unknown): unknown =>
  typeof value === 'number' ? names[value] : value;
