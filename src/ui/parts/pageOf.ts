/** The part of a long list that is shown. @param from  where it should begin; kept on the list */
export function pageOf<T>(items: readonly T[], from: number, size: number): readonly T[] {
  const begin = pageStart(items.length, from, size);
  return items.slice(begin, begin + size);
}

/** Where a page begins: a multiple of its size within the list. */
export function pageStart(total: number, from: number, size: number): number {
  const last = Math.max(Math.ceil(total / size) - 1, 0);
  return Math.min(Math.max(Math.floor(from / size), 0), last) * size;
}
