import { ordersFound } from './ordersFound.ts';
import type { PreparedMark } from './prepareMarks.ts';
import { skippedOrders } from './searchOrders.ts';

/** From this order on, nobody begins there: numbers of another kind fit high orders by chance. */
const HIGHEST_FIRST_ORDER = 3;

/**
 * Whether the orders look like chance: the first is nowhere and more are passed over than found, or of one fork and kind
 * of column only every second, third … one is there.
 * @param orders  of each row
 */
export function areOrdersStrange(rows: readonly PreparedMark[], orders: readonly number[]): boolean {
  const lowest = Math.min(...orders);
  if (lowest > HIGHEST_FIRST_ORDER || (lowest > 1 && skippedOrders(rows, orders) > rows.length)) return true;
  return [...ordersFound(rows, orders).values()].some((series) => {
    const sorted = [...series].sort((one, other) => one - other);
    return sorted.length > 1 && sorted.slice(1).every((order, i) => order - sorted[i] > 1);
  });
}
