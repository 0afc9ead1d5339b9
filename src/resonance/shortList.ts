/** Shared wherever nothing was found. */
export const NOTHING: readonly never[] = [];

/** Adds to a list that is there from the first one on: most have one, for which an empty list would grow to seventeen places. */
export function withOne<T>(list: T[] | null, one: T): T[] {
  if (list === null) return [one];
  list.push(one);
  return list;
}
