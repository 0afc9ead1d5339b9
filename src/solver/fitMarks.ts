import { chiSquaredLimit } from '../numeric/chiSquared.ts';
import { dot } from '../numeric/errorModel.ts';
import type { ErrorModel, Partition } from '../numeric/errorModel.ts';
import { fitLinear } from '../numeric/leastSquares.ts';
import type { LinearFit } from '../numeric/leastSquares.ts';
import { median } from '../numeric/median.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';

/** Where the end correction comes from. */
export type EndMode = 'free' | 'theory';

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
  readonly mode: EndMode;
  readonly speedMps: number;
  readonly end: number;
  readonly speedUncertaintyMps: number;
  readonly endUncertainty: number;
  /** Covariance of speed and end parameter; 0 where the end comes from theory alone. */
  readonly covariance: number;
  /** Measured minus fitted, for every row, fitted or not, m. */
  readonly residualsM: readonly number[];
  /**
   * Apparent shift of each fitted row over its stated uncertainty (a widened one would excuse its own outlier); null
   * where it can't be seen or the row isn't fitted.
   */
  readonly shifts: readonly (number | null)[];
  /** Against the stated uncertainties. */
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  readonly scatterFactor: number;
  readonly contributions: readonly Contribution[];
  /** speed = Σ weight·length (+ a constant); 0 for rows that aren't fitted. */
  readonly speedWeights: readonly number[];
}

/** How well a stated uncertainty is itself known: to 10 %, which is 50 degrees of freedom (JCGM 100:2008, G.4.2). */
export const STATED_DEGREES = 50;
/** A judgement about theory is known to 16 %: 20 degrees of freedom. */
export const JUDGED_DEGREES = 20;
/** Weight of the stated uncertainty against the scatter, in degrees of freedom, once that is larger. */
const STATED_WEIGHT_IN_SCATTER = 1;
/** The end correction is taken from the marks where they give it better than this many of theory's uncertainties. */
const FREE_END_LIMIT = 5;
/** Real walls are rough, moist or not quite round: the slowing is uncertain by this part. A judgement. */
const WALL_UNCERTAINTY = 0.1;
/**
 * Where the diameter is unknown the slowing isn't removed: an error to one side, 0.6 to 1.5 of a usual tube's slowing in
 * tubes 20 to 50 mm wide. Twice this part covers nearly all of that.
 */
const UNKNOWN_WALL_UNCERTAINTY = 0.85;

/**
 * Generalised least squares over all fitted rows at once. The end correction is free where the marks determine it, else
 * it is theory's with theory's uncertainty. Scatter beyond the stated readings widens these.
 * @param fitted  which rows count
 * @returns null where no row counts
 */
export function fitMarks(
  preparation: Preparation,
  orders: readonly number[],
  fitted: readonly boolean[],
  mode?: EndMode,
): MarksFit | null {
  const { rows } = preparation;
  const indexes = rows.flatMap((_, i) => (fitted[i] === true ? [i] : []));
  if (indexes.length === 0) return null;
  const chosen = indexes.map((i) => rows[i]);
  const columns = columnsOf(
    chosen,
    indexes.map((i) => orders[i]),
  );
  const free = mode === 'theory' ? null : fitOnce(preparation, chosen, columns, 'free');
  const isDetermined =
    free !== null &&
    Math.sqrt(free.fit.covariance[1][1]) < FREE_END_LIMIT * preparation.end.standardUncertainty;
  const byTheory =
    free !== null && (mode === 'free' || isDetermined)
      ? null
      : fitOnce(preparation, chosen, columns, 'theory');
  const isFree = free !== null && (byTheory === null || isTheoryRefuted(free, byTheory));
  const used = isFree ? free : byTheory;
  if (used === null) return null;
  return summarise({ preparation, orders, indexes, chosen }, used, isFree ? 'free' : 'theory');
}

/** Whether marks that agree with each other contradict theory's end correction: a wrong diameter, say. */
function isTheoryRefuted({ stated: free }: OneFit, { stated: byTheory }: OneFit): boolean {
  return (
    free.degreesOfFreedom > 0 &&
    free.chiSquared < chiSquaredLimit(free.degreesOfFreedom) &&
    byTheory.chiSquared > free.chiSquared + chiSquaredLimit(1, 0.999)
  );
}

/** Length that a row should have. */
export function modelLengthM(row: PreparedMark, order: number, speedMps: number, end: number): number {
  const halves = row.ends === 'closed' ? order - 0.5 : order;
  return halves * row.halfWavePerSpeedS * speedMps - row.endShape * end;
}

interface Columns {
  readonly speed: readonly number[];
  readonly end: readonly number[];
}

interface OneFit {
  readonly fit: LinearFit;
  readonly errors: ErrorModel;
  readonly scatterFactor: number;
  /** The fit before it was widened. */
  readonly stated: LinearFit;
}

function columnsOf(rows: readonly PreparedMark[], orders: readonly number[]): Columns {
  return {
    speed: rows.map((row, i) => (orders[i] - (row.ends === 'closed' ? 0.5 : 0)) * row.halfWavePerSpeedS),
    end: rows.map((row) => -row.endShape),
  };
}

function fitOnce(
  preparation: Preparation,
  rows: readonly PreparedMark[],
  columns: Columns,
  mode: EndMode,
): OneFit | null {
  const { end } = preparation;
  const y = rows.map((row) => row.lengthM + (mode === 'theory' ? row.endShape * end.expected : 0));
  const design = mode === 'free' ? [columns.speed, columns.end] : [columns.speed];
  // Errors in proportion to the column are taken of its expected length, never of the measured one: a mark that reads
  // short would else claim a smaller error and pull the common result down, the more the more marks there are.
  const aboutMps = median(
    rows.map((row, i) => (row.lengthM + row.endShape * end.expected) / columns.speed[i]),
  );
  const columnsM = columns.speed.map((perSpeed) => perSpeed * aboutMps);
  const attempt = (scatter: number): { fit: LinearFit; errors: ErrorModel } | null => {
    const errors = errorsOf({ preparation, rows, columnsM, mode, scatter });
    const fit = fitLinear(design, y, errors);
    return fit === null ? null : { fit, errors };
  };
  const stated = attempt(1);
  if (stated === null) return null;
  const { chiSquared, degreesOfFreedom } = stated.fit;
  if (degreesOfFreedom < 1 || chiSquared <= degreesOfFreedom)
    return { ...stated, scatterFactor: 1, stated: stated.fit };
  // No test of significance comes first: few marks rarely prove lengths that are rougher than stated, and a result that
  // waits for the proof claims too much until then.
  // Shared errors absorb part of the scatter, so the factor of the readings is found in a few rounds.
  let factor = 1;
  let widened = stated;
  for (let round = 0; round < 12; round += 1) {
    const scatter = widened.fit.chiSquared * factor * factor;
    const next = Math.sqrt(
      Math.max((STATED_WEIGHT_IN_SCATTER + scatter) / (STATED_WEIGHT_IN_SCATTER + degreesOfFreedom), 1),
    );
    const hasSettled = Math.abs(next / factor - 1) < 0.005;
    factor = next;
    widened = attempt(factor) ?? widened;
    if (hasSettled) break;
  }
  return { ...widened, scatterFactor: factor, stated: stated.fit };
}

interface RowErrors {
  readonly preparation: Preparation;
  readonly rows: readonly PreparedMark[];
  /** Expected length of each row's sounding column, end correction included. */
  readonly columnsM: readonly number[];
  readonly mode: EndMode;
  /** Factor of the stated readings, >= 1. */
  readonly scatter: number;
}

/** @see D'Agostini 1994, Nucl. Instrum. Methods A 346, 306, on common errors of scale that bias a fit */
function errorsOf({ preparation, rows, columnsM, mode, scatter }: RowErrors): ErrorModel {
  const { rule, end, wallsRemoved } = preparation;
  const wallPart = wallsRemoved ? WALL_UNCERTAINTY : UNKNOWN_WALL_UNCERTAINTY;
  return {
    variances: rows.map((row) => row.variance * scatter * scatter),
    partitions: [
      // A setup has one fork, so these groups lie within the next ones.
      { groups: rows.map(({ setup }) => setup), errors: rows.map((row) => row.located.loudestUncertaintyM) },
      {
        groups: rows.map(({ fork }) => fork),
        errors: rows.map((row, i) => columnsM[i] * row.relativeForkUncertainty),
      },
    ],
    commonErrors: [
      rows.map(() => rule.zeroStandardUncertaintyM),
      rows.map((row, i) => (columnsM[i] - row.endShape * end.expected) * rule.scaleStandardUncertainty),
      rows.map((row, i) => columnsM[i] * row.wallFraction * wallPart),
      ...(mode === 'theory' ? [rows.map((row) => row.endShape * end.standardUncertainty)] : []),
    ],
  };
}

/**
 * Degrees of freedom of readings whose stated variance was widened: the stated part and the excess, which is known from
 * few residuals only, combined.
 * @see Welch 1947 and Satterthwaite 1946; JCGM 100:2008, G.4.1
 */
function degreesOfReading(scatterFactor: number, degreesOfFreedom: number): number {
  const variance = scatterFactor * scatterFactor;
  const excess = (variance - 1) ** 2 / Math.max(degreesOfFreedom, 1);
  return variance ** 2 / (1 / STATED_DEGREES + excess);
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
  { fit, errors, scatterFactor, stated }: OneFit,
  mode: EndMode,
): MarksFit {
  const { rows, end } = preparation;
  const speedMps = fit.parameters[0];
  const endValue = mode === 'free' ? fit.parameters[1] : end.expected;
  const weights = fit.weights[0];
  const readingDegrees = degreesOfReading(scatterFactor, fit.degreesOfFreedom);

  const [setupSums, forkSums] = errors.partitions.map((partition) => sumsOf(partition, weights));
  const shared = errors.commonErrors.map((column) => dot(weights, column));
  const contribution = (
    source: Contribution['source'],
    group: number | null,
    signedMps: number,
    degreesOfFreedom: number,
  ): Contribution => ({ source, group, contributionMps: Math.abs(signedMps), signedMps, degreesOfFreedom });
  const isJudged = (setup: number): boolean =>
    chosen.some((row) => row.setup === setup && row.located.isRiseAssumed);
  const contributions: Contribution[] = [
    contribution(
      'reading',
      null,
      Math.sqrt(weights.reduce((sum, w, i) => sum + w * w * errors.variances[i], 0)),
      readingDegrees,
    ),
    ...[...forkSums].map(([fork, sum]) => contribution('fork', fork, sum, STATED_DEGREES)),
    ...[...setupSums].flatMap(([setup, sum]) =>
      sum === 0
        ? []
        : [contribution('loudest', setup, sum, isJudged(setup) ? JUDGED_DEGREES : STATED_DEGREES)],
    ),
    contribution('zero', null, shared[0], STATED_DEGREES),
    contribution('scale', null, shared[1], STATED_DEGREES),
    contribution('wall', null, shared[2], JUDGED_DEGREES),
  ];
  if (mode === 'theory') contributions.push(contribution('end', null, shared[3], JUDGED_DEGREES));

  const shifts: (number | null)[] = rows.map(() => null);
  const speedWeights = rows.map(() => 0);
  for (const [position, i] of indexes.entries()) {
    shifts[i] = stated.shifts[position];
    speedWeights[i] = weights[position];
  }
  return {
    mode,
    speedMps,
    end: endValue,
    speedUncertaintyMps: Math.sqrt(Math.max(fit.covariance[0][0], 0)),
    endUncertainty: mode === 'free' ? Math.sqrt(Math.max(fit.covariance[1][1], 0)) : end.standardUncertainty,
    covariance: mode === 'free' ? fit.covariance[0][1] : 0,
    residualsM: rows.map((row, i) => row.lengthM - modelLengthM(row, orders[i], speedMps, endValue)),
    shifts,
    chiSquared: stated.chiSquared,
    degreesOfFreedom: fit.degreesOfFreedom,
    scatterFactor,
    contributions,
    speedWeights,
  };
}
