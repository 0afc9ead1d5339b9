import type { Solution } from '../solver/solution.ts';
import { fixed, signed } from './numbers.ts';

/** What is true of the practice column, as far as it is compared. */
export interface PracticeTruth {
  readonly freeSpeedMps: number;
  readonly forkHz: number;
  readonly resonantLengthsM: readonly number[];
}

/** The practice column's truth beside what was found. */
export function truthWords(truth: PracticeTruth, solution: Solution): string {
  const errorMps = solution.speedMps - truth.freeSpeedMps;
  const percent = (100 * errorMps) / truth.freeSpeedMps;
  const covered = Math.abs(errorMps) <= solution.expandedUncertaintyMps;
  const lengths = truth.resonantLengthsM
    .slice(0, 3)
    .map((lengthM) => fixed(lengthM * 100, 2))
    .join(', ');
  return (
    `The true speed is ${fixed(truth.freeSpeedMps, 2)} m/s: you are off by ${signed(errorMps, 2)} m/s (${signed(percent, 2)} %), ` +
    `${covered ? 'which your uncertainty covers' : 'more than your uncertainty says'}. ` +
    `The fork really has ${fixed(truth.forkHz, 2)} Hz; the column resonates at ${lengths} cm.`
  );
}
