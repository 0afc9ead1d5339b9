import { isWithin, LIMITS } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';

/** Digits of a picometre: what a difference of two binary fractions adds is dropped, nothing that was measured. */
const PER_M = 1e12;

/**
 * The column that a reading on the rule stands for, m: the rule's zero offset is taken off.
 * @param readingM  as it stands on the rule
 * @param zeroOffsetM  reading at no column
 */
export function columnM(readingM: number, zeroOffsetM: number): number {
  return zeroOffsetM === 0 ? readingM : Math.round((readingM - zeroOffsetM) * PER_M) / PER_M;
}

/** The reading on the rule that a column of this length gives, m. */
export function readingOfColumnM(lengthM: number, zeroOffsetM: number): number {
  return zeroOffsetM === 0 ? lengthM : Math.round((lengthM + zeroOffsetM) * PER_M) / PER_M;
}

/** Whether a reading leaves a column of a possible length once the zero offset is off. */
export function hasColumn(readingM: number, zeroOffsetM: number): boolean {
  return isWithin(LIMITS.lengthM, columnM(readingM, zeroOffsetM));
}

/** The readings that are possible with a zero offset: both they and their columns are lengths. */
export function readingLimit(zeroOffsetM: number): Limit {
  const { lowest, highest } = LIMITS.lengthM;
  return {
    lowest: Math.max(lowest, readingOfColumnM(lowest, zeroOffsetM)),
    highest: Math.min(highest, readingOfColumnM(highest, zeroOffsetM)),
  };
}
