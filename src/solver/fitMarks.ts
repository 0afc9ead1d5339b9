import { dot } from '../numeric/errorModel.ts';
import type { Partition } from '../numeric/errorModel.ts';
import type { LinearFit } from '../numeric/leastSquares.ts';
import type { EndPrior, Preparation, PreparedMark } from './prepareMarks.ts';
import { columnsOf, degreesOfReading, JUDGED_DEGREES, STATED_DEGREES, weightedFit } from './weightedFit.ts';
import type { EndEstimate, WeightedFit } from './weightedFit.ts';

/** One source of uncertainty of the speed. */
export interface Contribution {
  readonly source: 'reading' | 'fork' | 'loudest' | 'zero' | 'scale' | 'end' | 'wall';
  /** The fork's number where it is a fork's, the setup's where it is of a setup's loudest places. */
  readonly group: number | null;
  readonly contributionMps: number;
  /** With its sign, so that the same error can cancel between two results; of readings always above 0. */
  readonly signedMps: number;
  readonly degreesOfFreedom: number;
}

/** Speed and end parameter from marks with known orders. */
export interface MarksFit {
  readonly speedMps: number;
  readonly end: number;
  readonly speedUncertaintyMps: number;
  readonly endUncertainty: number;
  /** Correlation coefficient r(speed, end parameter), -1..1. */
  readonly correlation: number;
  /** The end parameter from the marks alone; null where they don't determine it. */
  readonly ownEnd: EndEstimate | null;
  /** What is known of the mouth and counts beside the marks, by its weight; null where they alone give the end. */
  readonly constraint: EndEstimate | null;
  /** Measured minus fitted, for every row, fitted or not, m. */
  readonly residualsM: readonly number[];
  /**
   * Apparent shift of each fitted row over its stated uncertainty (a widened one would excuse its own outlier); null
   * where it can't be seen or the row isn't fitted.
   */
  readonly shifts: readonly (number | null)[];
  /** Fitted rows that nothing else in the table could show to be misread: what is known of mouths left aside. */
  readonly unchecked: readonly number[];
  /** Against the stated uncertainties; a constraint counts as one more value. */
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  readonly scatterFactor: number;
  readonly contributions: readonly Contribution[];
  /** speed = Σ weight·length (+ a constant); 0 for rows that aren't fitted. */
  readonly speedWeights: readonly number[];
}

/**
 * Without a diameter what is known of mouths is a centimetre or so: it counts only where the marks give the end
 * correction worse than this many of its uncertainties.
 */
const FREE_END_LIMIT = 5;
/** Below this part of the speed a contribution is the noise of doubles (2.2e-16 each step), not of the marks. */
const ROUNDING = 1e-13;

/**
 * Generalised least squares over all fitted rows at once. What is known of the mouth is one more value beside the
 * lengths, which they outweigh where they say more. Scatter beyond the stated readings widens these.
 * @param fitted  which rows count
 * @returns null where no row counts
 */
export function fitMarks(
  preparation: Preparation,
  orders: readonly number[],
  fitted: readonly boolean[],
): MarksFit | null {
  const { rows, end, endIsRelative } = preparation;
  const indexes = rows.flatMap((_, i) => (fitted[i] === true ? [i] : []));
  if (indexes.length === 0) return null;
  const chosen = indexes.map((i) => rows[i]);
  const columns = columnsOf(
    chosen,
    indexes.map((i) => orders[i]),
  );
  const free = weightedFit(preparation, chosen, columns, null);
  const ownEnd = free === null ? null : endEstimate(free.stated);
  const isFree =
    !endIsRelative &&
    ownEnd !== null &&
    ownEnd.standardUncertainty < FREE_END_LIMIT * end.standardUncertainty;
  // One wrong order among several marks may turn the wave round: that says nothing of the mouth.
  const isTurned = free !== null && free.degreesOfFreedom > 0 && free.stated.parameters[0] <= 0;
  const constraint = isFree ? null : allowedEnd(end, isTurned ? null : ownEnd);
  const used = isFree ? free : weightedFit(preparation, chosen, columns, constraint);
  if (used === null) return null;
  const unchecked =
    free === null
      ? []
      : indexes.filter((_, at) => free.degreesOfFreedom < 1 || free.stated.shifts[at] === null);
  return summarise({ preparation, orders, indexes, chosen }, { ...used, ownEnd, constraint, unchecked });
}

/** Whether the marks say more of the end correction than what they were constrained by. */
export function isEndMeasured({ ownEnd, constraint }: MarksFit): boolean {
  if (constraint === null) return true;
  return ownEnd !== null && ownEnd.standardUncertainty < constraint.standardUncertainty;
}

function endEstimate({ parameters, covariance }: LinearFit): EndEstimate {
  return { value: parameters[1], standardUncertainty: Math.sqrt(covariance[1][1]) };
}

/**
 * What is known of the mouth, widened where the marks contradict it, so that a wrong diameter or an odd mouth doesn't
 * bend the speed: by as much as the two differ beyond two standard uncertainties. Marks that can't tell one
 * thinkable mouth from another contradict nothing.
 */
function allowedEnd(known: EndPrior, own: EndEstimate | null): EndEstimate {
  const { expected: value, standardUncertainty: usual, lowest, highest } = known;
  if (own === null || own.standardUncertainty > (highest - lowest) / 2)
    return { value, standardUncertainty: usual };
  const beyond = (own.value - value) ** 2 - 4 * (usual ** 2 + own.standardUncertainty ** 2);
  return { value, standardUncertainty: Math.sqrt(usual ** 2 + Math.max(beyond, 0)) };
}

/** Length that a row should have. */
export function modelLengthM(row: PreparedMark, order: number, speedMps: number, end: number): number {
  const halves = row.ends === 'closed' ? order - 0.5 : order;
  return halves * row.halfWavePerSpeedS * speedMps - row.endShape * end;
}

/** Each group's effect on the speed, one standard uncertainty of its error large. */
function sumsOf({ groups, errors }: Partition, weights: readonly number[]): ReadonlyMap<number, number> {
  const sums = new Map<number, number>();
  for (const [i, group] of groups.entries()) sums.set(group, (sums.get(group) ?? 0) + weights[i] * errors[i]);
  return sums;
}

/** The rows that are fitted, among all. */
interface FittedRows {
  readonly preparation: Preparation;
  /** Of all rows. */
  readonly orders: readonly number[];
  /** Of the fitted ones. */
  readonly indexes: readonly number[];
  readonly chosen: readonly PreparedMark[];
}

function summarise(
  { preparation, orders, indexes, chosen }: FittedRows,
  {
    fit,
    errors,
    degreesOfFreedom,
    scatterFactor,
    stated,
    ...found
  }: WeightedFit & Pick<MarksFit, 'ownEnd' | 'constraint' | 'unchecked'>,
): MarksFit {
  const { rows } = preparation;
  const [speedMps, end] = fit.parameters;
  const [weights] = fit.weights;
  const [[speedVariance, covariance], [, endVariance]] = fit.covariance;
  const readingDegrees = degreesOfReading(chosen, scatterFactor, degreesOfFreedom);

  const [setupSums, forkSums] = errors.partitions.map((partition) => sumsOf(partition, weights));
  const shared = errors.commonErrors.map((column) => dot(weights, column));
  const contribution = (
    source: Contribution['source'],
    group: number | null,
    signedMps: number,
    degreesOfFreedom: number,
  ): Contribution => {
    // What cancels leaves the arithmetic's noise: no error of the rule's zero moves a slope.
    const clearMps = Math.abs(signedMps) < ROUNDING * Math.abs(speedMps) ? 0 : signedMps;
    return { source, group, contributionMps: Math.abs(clearMps), signedMps: clearMps, degreesOfFreedom };
  };
  const isJudged = (setup: number): boolean =>
    chosen.some((row) => row.setup === setup && row.located.isRiseAssumed);
  const reading = Math.sqrt(chosen.reduce((sum, _, i) => sum + weights[i] ** 2 * errors.variances[i], 0));
  const contributions: Contribution[] = [
    contribution('reading', null, reading, readingDegrees),
    ...[...forkSums].flatMap(([fork, sum]) =>
      fork < 0 ? [] : [contribution('fork', fork, sum, STATED_DEGREES)],
    ),
    ...[...setupSums].flatMap(([setup, sum]) =>
      sum === 0
        ? []
        : [contribution('loudest', setup, sum, isJudged(setup) ? JUDGED_DEGREES : STATED_DEGREES)],
    ),
    contribution('zero', null, shared[0], STATED_DEGREES),
    contribution('scale', null, shared[1], STATED_DEGREES),
    contribution('wall', null, shared[2], JUDGED_DEGREES),
  ];
  if (found.constraint !== null) {
    const last = chosen.length;
    const byEnd = weights[last] * Math.sqrt(errors.variances[last]);
    contributions.push(contribution('end', null, byEnd, JUDGED_DEGREES));
  }

  const shifts: (number | null)[] = rows.map(() => null);
  const speedWeights = rows.map(() => 0);
  for (const [position, i] of indexes.entries()) {
    shifts[i] = stated.shifts[position];
    speedWeights[i] = weights[position];
  }
  return {
    ...found,
    speedMps,
    end,
    speedUncertaintyMps: Math.sqrt(Math.max(speedVariance, 0)),
    endUncertainty: Math.sqrt(Math.max(endVariance, 0)),
    correlation: covariance / Math.sqrt(speedVariance * endVariance),
    residualsM: rows.map((row, i) => row.lengthM - modelLengthM(row, orders[i], speedMps, end)),
    shifts,
    chiSquared: stated.chiSquared,
    degreesOfFreedom,
    scatterFactor,
    contributions,
    speedWeights,
  };
}
