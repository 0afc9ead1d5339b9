import { LIMITS } from '../../limits/limits.ts';
import type { Mark } from '../../marks/mark.ts';
import type { Outcome } from '../../session/experiment/outcome.ts';

/** Offered in any case: a metre of tube holds no more with the usual forks. */
const USUAL_ORDERS = 8;

/** The highest order among marks, set by hand or solved; 0 where there is none. */
export function highestOrderOf(marks: readonly Mark[], outcome: Outcome): number {
  const set = marks.map(({ order }) => order ?? 0);
  const solved = outcome.places.flatMap(({ solution }) =>
    solution.speedMps === null ? [] : solution.marks.map(({ order }) => order),
  );
  return [...set, ...solved].reduce((highest, order) => Math.max(highest, order), 0);
}

/** The orders to choose from: up to two beyond the highest that there is, so that any can be reached. */
export function offeredOrders(highestOrder: number): readonly number[] {
  const last = Math.min(Math.max(USUAL_ORDERS, highestOrder + 2), LIMITS.order.highest);
  return Array.from({ length: last }, (_, index) => index + 1);
}
