import { companyOf, likelyCause } from './likelyCause.ts';
import { modelLengthM } from './fitMarks.ts';
import { median } from './median.ts';
import type { PreparedMark } from './prepareMarks.ts';
import { nearestOrder } from './searchOrders.ts';
import type { SolverMark } from './solution.ts';
import { solveInFull } from './solve.ts';
import { centimetres, inWords, pitch } from './wording.ts';

/** The usual forks of a school's set, Hz: what a fork may be mistaken for. */
const USUAL_SET_HZ = [256, 261.6, 288, 320, 329.6, 341.3, 384, 392, 426.7, 440, 480, 493.9, 512, 523.3];
/** A mistaken fork must explain the speed to within this part, twice the group's own uncertainty included. */
const FORK_MATCH = 0.004;
/** A rule whose zero is off by less is no reason, m. */
const SMALLEST_SHIFT_M = 0.002;

/**
 * Why a group's result lies off its class's, as its own marks show it with the class's speed taken for true.
 * @param marks  the group's, as they were solved
 * @param speedMps  the class's speed in the group's own air, > 0
 * @param classForksHz  pitches that other groups used
 * @returns one sentence; null where the marks give no result
 * @throws RangeError if the speed isn't above 0
 */
export function likelyGroupReason(
  marks: readonly SolverMark[],
  speedMps: number,
  classForksHz: readonly number[] = [],
): string | null {
  if (!(speedMps > 0)) throw new RangeError(`speedMps must be above 0, got ${speedMps}`);
  const full = solveInFull(marks);
  if (!('fit' in full)) return null;
  const { solution, preparation, outliers } = full;
  const rows = preparation.rows.filter((_, i) => outliers[i] !== true);
  const fork = mistakenFork(rows, solution.speedMps / speedMps, relative(solution), classForksHz);
  if (fork !== null) return fork;

  const end = preparation.end.expected;
  const residualsM = rows.map(
    (row) => row.lengthM - modelLengthM(row, nearestOrder(row, speedMps, end), speedMps, end),
  );
  const shiftM = median(residualsM);
  const apartM = residualsM.map((residualM) => Math.abs(residualM - shiftM));
  const isOff = rows.map((row, i) => (apartM[i] ?? 0) > 3 * toleranceM(row));
  if (isOff.every((is) => !is) && Math.abs(shiftM) > SMALLEST_SHIFT_M) {
    const side = shiftM > 0 ? 'long' : 'short';
    return `With the class’s speed all its lengths are about ${centimetres(Math.abs(shiftM))} cm too ${side}: ${zeroQuestion(rows)}`;
  }
  // With the class's speed held, the marks that are wrong stand out even where a fit of them all followed them.
  const worst = rows
    .map((row, i) => ({ row, residualM: residualsM[i] ?? 0, off: (apartM[i] ?? 0) / toleranceM(row) }))
    .sort((one, other) => other.off - one.off)
    .at(0);
  if (worst !== undefined && worst.off > 3) {
    const company = companyOf(rows, speedMps, end);
    const cause = likelyCause(worst.row, worst.residualM, speedMps, end, company);
    return `${worst.row.mark.key} (${centimetres(worst.row.lengthM)} cm): ${cause}`;
  }
  const percent = 100 * (solution.speedMps / speedMps - 1);
  return `Its lengths agree with each other but are ${inWords(Math.abs(percent), 1)} % too ${percent > 0 ? 'long' : 'short'} for the class’s speed: check the fork’s pitch, the rule and the noted temperature.`;
}

/** Where the rule's zero belongs depends on the tube. */
function zeroQuestion(rows: readonly PreparedMark[]): string {
  const isOpen = rows.every((row) => row.ends === 'open');
  const isClosed = rows.every((row) => row.ends === 'closed');
  const place = isOpen
    ? 'at the tube’s other end'
    : isClosed
      ? 'at the tube’s closed end'
      : 'at the column’s end';
  return `is the rule’s zero ${place}, and the offset typed?`;
}

function relative(solution: { readonly speedMps: number; readonly standardUncertaintyMps: number }): number {
  return solution.standardUncertaintyMps / solution.speedMps;
}

/** The length's own uncertainty, the fork's and that of the end correction from theory, m. */
function toleranceM(row: PreparedMark): number {
  return Math.hypot(Math.sqrt(row.variance), row.lengthM * row.relativeForkUncertainty) + 0.0005;
}

/** A single fork whose true pitch would bring the speed to the class's. */
function mistakenFork(
  rows: readonly PreparedMark[],
  ratio: number,
  relativeUncertainty: number,
  classForksHz: readonly number[],
): string | null {
  const forks = new Set(rows.map((row) => row.mark.frequencyHz));
  const [notedHz] = forks;
  if (forks.size !== 1 || notedHz === undefined) return null;
  // The waves are as long as the true fork makes them: noted over true pitch is the speeds' ratio.
  const trueHz = notedHz / ratio;
  const near = [...new Set([...classForksHz, ...USUAL_SET_HZ])]
    .map((hz) => ({ hz, off: Math.abs(hz / trueHz - 1) }))
    .filter(({ hz, off }) => off < FORK_MATCH + 2 * relativeUncertainty && Math.abs(hz / notedHz - 1) > 0.01)
    .sort((one, other) => one.off - other.off)
    .at(0);
  return near === undefined
    ? null
    : `Its lengths fit a fork of ${pitch(near.hz)} Hz: another fork than the ${pitch(notedHz)} Hz that is noted?`;
}
