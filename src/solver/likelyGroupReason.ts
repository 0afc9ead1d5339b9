import type { ColumnEnds } from '../marks/mark.ts';
import { mistakenFork } from './mistakenFork.ts';
import { likelyCause, rowsInUse } from './likelyCause.ts';
import { modelLengthM } from './fitMarks.ts';
import { median } from '../numeric/median.ts';
import type { PreparedMark } from './prepareMarks.ts';
import { nearestOrder, searchVariance } from './searchOrders.ts';
import type { OutlierCause } from './outlierCause.ts';
import type { SolverMark } from './solution.ts';
import { solveInFull } from './solve.ts';

/** Why a group's result lies off its class's. */
export type GroupReason =
  /** Its lengths are those of another fork than the one that is noted. */
  | { readonly code: 'other-fork'; readonly fittingHz: number; readonly notedHz: number }
  /** All its lengths are off by about as much; the shift is measured minus expected, `ends` null where they differ. */
  | { readonly code: 'shifted-zero'; readonly shiftM: number; readonly ends: ColumnEnds | null }
  /** One of its marks is off. */
  | {
      readonly code: 'mark-off';
      readonly key: string;
      readonly lengthM: number;
      readonly cause: OutlierCause;
    }
  /** Its lengths agree with each other but are all too long or short, by this part of the speed. */
  | { readonly code: 'all-off'; readonly excess: number };

/** A rule whose zero is off by less is no reason, m. */
const SMALLEST_SHIFT_M = 0.002;

/**
 * Why a group's result lies off its class's, as its own marks show it with the class's speed taken for true.
 * @param marks  the group's, as they were solved
 * @param speedMps  the class's speed in the group's own air, > 0
 * @param classForksHz  frequencies that other groups used
 * @returns null where the marks give no result
 * @throws RangeError if the speed isn't above 0
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30');
 * likelyGroupReason(marksOfRows(rows), 322) // → { code: 'other-fork', fittingHz: 480, notedHz: 512 }
 */
export function likelyGroupReason(
  marks: readonly SolverMark[],
  speedMps: number,
  classForksHz: readonly number[] = [],
): GroupReason | null {
  if (!(speedMps > 0)) throw new RangeError(`speedMps must be above 0, got ${speedMps}`);
  const full = solveInFull(marks);
  if (!('fit' in full)) return null;
  const { solution, preparation, outliers } = full;
  const rows = preparation.rows.filter((_, i) => outliers[i] !== true);
  const relative = solution.standardUncertaintyMps / solution.speedMps;
  const fork = mistakenFork(rows, solution.speedMps / speedMps, relative, classForksHz);
  if (fork !== null) return { code: 'other-fork', ...fork };

  const end = preparation.end.expected;
  const residualsM = rows.map(
    (row) => row.lengthM - modelLengthM(row, nearestOrder(row, speedMps, end), speedMps, end),
  );
  const shiftM = median(residualsM);
  const apartM = residualsM.map((residualM) => Math.abs(residualM - shiftM));
  const isOff = rows.map((row, i) => apartM[i] > 3 * toleranceM(row));
  if (isOff.every((is) => !is) && Math.abs(shiftM) > SMALLEST_SHIFT_M) {
    return { code: 'shifted-zero', shiftM, ends: endsOf(rows) };
  }
  // With the class's speed held, the marks that are wrong stand out even where a fit of them all followed them.
  const worst = rows
    .map((row, i) => ({ row, residualM: residualsM[i], off: apartM[i] / toleranceM(row) }))
    .sort((one, other) => other.off - one.off)
    .at(0);
  if (worst !== undefined && worst.off > 3) {
    const { row, residualM } = worst;
    const inUse = rowsInUse(rows, speedMps, end);
    const cause = likelyCause({ row, residualM, speedMps, end, inUse });
    return { code: 'mark-off', key: row.mark.key, lengthM: row.lengthM, cause };
  }
  return { code: 'all-off', excess: solution.speedMps / speedMps - 1 };
}

/** What kind of column all rows are; null where they differ. */
function endsOf(rows: readonly PreparedMark[]): ColumnEnds | null {
  const kinds = new Set(rows.map(({ ends }) => ends));
  const [ends] = kinds;
  return kinds.size === 1 && ends !== undefined ? ends : null;
}

/** The length's own uncertainty, the fork's and that of the end correction from theory, m. */
function toleranceM(row: PreparedMark): number {
  return Math.sqrt(searchVariance(row)) + 0.0005;
}
