import type { PreparedMark } from './prepareMarks.ts';

/**
 * Orders that the rows of each fork and kind of column show.
 * @param orders  of each row
 * @returns at least one order each, by fork's number and ends
 */
export function ordersFound(
  rows: readonly PreparedMark[],
  orders: readonly number[],
): ReadonlyMap<string, ReadonlySet<number>> {
  const found = new Map<string, Set<number>>();
  for (const [i, row] of rows.entries()) {
    const series = seriesOf(row);
    found.set(series, (found.get(series) ?? new Set<number>()).add(orders[i]));
  }
  return found;
}

/** Name of a row's fork and kind of column. */
export function seriesOf({ fork, ends }: Pick<PreparedMark, 'fork' | 'ends'>): string {
  return `${fork} ${ends}`;
}
