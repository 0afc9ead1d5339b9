import type { PreparedMark } from './prepareMarks.ts';

/** Scatter of readings of the same resonances: a Type A evaluation, which no model has a part in. */
export interface Repeatability {
  /** Of one reading. */
  readonly standardDeviationM: number;
  readonly degreesOfFreedom: number;
}

/**
 * Pooled standard deviation of repeated readings: same fork, place, ends and order.
 * @param rows  those that are fitted
 * @param orders  of each row
 * @returns null where nothing was read twice; rows that are copies of one another are one reading
 * @see JCGM 100:2008, 4.2.4 (pooled estimate) and 4.2.2
 */
export function repeatability(
  rows: readonly PreparedMark[],
  orders: readonly number[],
): Repeatability | null {
  const groups = new Map<string, number[]>();
  for (const [i, { setup, lengthM, mark }] of rows.entries()) {
    const name = `${setup} ${orders[i]}`;
    const lengths = groups.get(name) ?? [];
    groups.set(name, lengths);
    if ((mark.copies ?? 1) === 1 || !lengths.includes(lengthM)) lengths.push(lengthM);
  }
  let squares = 0;
  let degreesOfFreedom = 0;
  for (const lengths of groups.values()) {
    const mean = lengths.reduce((sum, lengthM) => sum + lengthM, 0) / lengths.length;
    squares += lengths.reduce((sum, lengthM) => sum + (lengthM - mean) ** 2, 0);
    degreesOfFreedom += lengths.length - 1;
  }
  return degreesOfFreedom === 0
    ? null
    : { standardDeviationM: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}
