import type { ErrorModel } from '../numeric/errorModel.ts';
import { fitLinear } from '../numeric/leastSquares.ts';
import type { LinearFit } from '../numeric/leastSquares.ts';
import { median } from '../numeric/median.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';

/** The end parameter, from the marks or from what is known of mouths. */
export interface EndEstimate {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** How well a stated uncertainty is itself known: to 10 %, which is 50 degrees of freedom (JCGM 100:2008, G.4.2). */
export const STATED_DEGREES = 50;
/** A judgement about theory is known to 16 %: 20 degrees of freedom. */
export const JUDGED_DEGREES = 20;
/** Real walls are rough, moist or not quite round: the slowing is uncertain by this part. A judgement. */
const WALL_UNCERTAINTY = 0.1;
/**
 * Where the diameter is unknown the slowing isn't removed: an error to one side, 0.6 to 1.5 of a usual tube's slowing in
 * tubes 20 to 50 mm wide. Twice this part covers nearly all of that.
 */
const UNKNOWN_WALL_UNCERTAINTY = 0.85;

/** The columns of the linear model: a length's change with the speed, and with the end parameter. */
export interface Columns {
  readonly speed: readonly number[];
  readonly end: readonly number[];
}

/** A fit of rows with known orders, once as their errors were stated and once as their scatter says. */
export interface WeightedFit {
  readonly fit: LinearFit;
  readonly errors: ErrorModel;
  /** Without copies. */
  readonly degreesOfFreedom: number;
  readonly scatterFactor: number;
  /** The fit before it was widened. */
  readonly stated: LinearFit;
}

/** How well the readings' uncertainty is known beforehand, and the least that the scatter may make of it. */
interface ReadingKnowledge {
  /** Weight against the scatter, in degrees of freedom. */
  readonly degrees: number;
  readonly lowestFactor: number;
}

/** Who stated it meant it: scatter may widen it, luck may not narrow it. */
const STATED_READING: ReadingKnowledge = { degrees: 1, lowestFactor: 1 };
/**
 * Where nobody said how well the places were found by ear, the lengths tell, as soon as there are some: 2.5 mm, known to
 * about a third (JCGM 100:2008, G.4.2), and never better than half a millimetre.
 */
const ASSUMED_READING: ReadingKnowledge = { degrees: 5, lowestFactor: 0.2 };

/** Columns of rows whose orders are known: s for each m/s of speed, and m for each unit of the end parameter. */
export function columnsOf(rows: readonly PreparedMark[], orders: readonly number[]): Columns {
  return {
    speed: rows.map((row, i) => (orders[i] - (row.ends === 'closed' ? 0.5 : 0)) * row.halfWavePerSpeedS),
    end: rows.map((row) => -row.endShape),
  };
}

/**
 * Speed and end parameter of rows by generalised least squares, and how much more than stated the rows scatter.
 * @param rows  at least one
 * @param end  what is known of the end parameter beforehand, one more value to fit; null: nothing
 * @returns null where speed and end can't both be told
 */
export function weightedFit(
  preparation: Preparation,
  rows: readonly PreparedMark[],
  columns: Columns,
  end: EndEstimate | null,
): WeightedFit | null {
  const expectedEnd = preparation.end.expected;
  const isConstrained = end !== null;
  const y = [...rows.map((row) => row.lengthM), ...(isConstrained ? [end.value] : [])];
  const design = isConstrained
    ? [
        [...columns.speed, 0],
        [...columns.end, 1],
      ]
    : [columns.speed, columns.end];
  // Errors in proportion to the column are taken of its expected length, never of the measured one: a mark that reads
  // short would else claim a smaller error and pull the common result down, the more the more marks there are.
  const aboutMps = median(
    rows.map((row, i) => (row.lengthM + row.endShape * expectedEnd) / columns.speed[i]),
  );
  const columnsM = columns.speed.map((perSpeed) => perSpeed * aboutMps);
  const attempt = (scatter: number): { fit: LinearFit; errors: ErrorModel } | null => {
    const errors = errorsOf({ preparation, rows, columnsM, end, scatter });
    const fit = fitLinear(design, y, errors);
    return fit === null ? null : { fit, errors };
  };
  const stated = attempt(1);
  if (stated === null) return null;
  const degreesOfFreedom = stated.fit.degreesOfFreedom - surplusCopies(rows);
  if (degreesOfFreedom < 1) return { ...stated, degreesOfFreedom, scatterFactor: 1, stated: stated.fit };
  // No test of significance comes first: few marks rarely prove lengths that are rougher than stated, and a result that
  // waits for the proof claims too much until then.
  // Shared errors absorb part of the scatter, so the factor of the readings is found in a few rounds.
  const { degrees, lowestFactor } = readingKnowledge(rows);
  let factor = 1;
  let widened = stated;
  for (let round = 0; round < 12; round += 1) {
    const scatter = widened.fit.chiSquared * factor * factor;
    const next = Math.max(Math.sqrt((degrees + scatter) / (degrees + degreesOfFreedom)), lowestFactor);
    const hasSettled = Math.abs(next / factor - 1) < 0.005;
    factor = next;
    widened = attempt(factor) ?? widened;
    if (hasSettled) break;
  }
  return { ...widened, degreesOfFreedom, scatterFactor: factor, stated: stated.fit };
}

/** How many rows are copies of others, which say nothing of their own. */
export function surplusCopies(rows: readonly PreparedMark[]): number {
  return Math.round(rows.reduce((sum, { mark }) => sum + 1 - 1 / (mark.copies ?? 1), 0));
}

function readingKnowledge(rows: readonly PreparedMark[]): ReadingKnowledge {
  return rows.every(({ mark }) => mark.isReadingAssumed === true) ? ASSUMED_READING : STATED_READING;
}

interface RowErrors {
  readonly preparation: Preparation;
  readonly rows: readonly PreparedMark[];
  /** Expected length of each row's sounding column, end correction included. */
  readonly columnsM: readonly number[];
  /** What is known of the end parameter beforehand: a value of its own after the rows; null: nothing. */
  readonly end: EndEstimate | null;
  /** Factor of the stated readings. */
  readonly scatter: number;
}

/** @see D'Agostini 1994, Nucl. Instrum. Methods A 346, 306, on common errors of scale that bias a fit */
function errorsOf({ preparation, rows, columnsM, end, scatter }: RowErrors): ErrorModel {
  const { rule, end: known, wallsRemoved } = preparation;
  const wallPart = wallsRemoved ? WALL_UNCERTAINTY : UNKNOWN_WALL_UNCERTAINTY;
  /** The constraint shares no error with the lengths. */
  const with0 = (values: readonly number[]): readonly number[] => (end === null ? values : [...values, 0]);
  const variances = rows.map((row) => row.variance * scatter * scatter);
  return {
    variances: end === null ? variances : [...variances, end.standardUncertainty ** 2],
    partitions: [
      // A setup has one fork, so these groups lie within the next ones.
      {
        groups: aside(
          rows.map(({ setup }) => setup),
          end,
        ),
        errors: with0(rows.map((row) => row.located.loudestUncertaintyM)),
      },
      {
        groups: aside(
          rows.map(({ fork }) => fork),
          end,
        ),
        errors: with0(rows.map((row, i) => columnsM[i] * row.relativeForkUncertainty)),
      },
    ],
    commonErrors: [
      with0(rows.map(() => rule.zeroStandardUncertaintyM)),
      with0(
        rows.map((row, i) => (columnsM[i] - row.endShape * known.expected) * rule.scaleStandardUncertainty),
      ),
      with0(rows.map((row, i) => columnsM[i] * row.wallFraction * wallPart)),
    ],
  };
}

/** A constraint belongs to no group of the rows': -1. */
function aside(groups: readonly number[], end: EndEstimate | null): readonly number[] {
  return end === null ? groups : [...groups, -1];
}

/**
 * Degrees of freedom of readings whose uncertainty was stated and then widened: the stated part and the excess, which is
 * known from few residuals only, combined. Where it was assumed, what it was taken to be worth and the residuals.
 * @see Welch 1947 and Satterthwaite 1946; JCGM 100:2008, G.4.1
 */
export function degreesOfReading(
  rows: readonly PreparedMark[],
  scatterFactor: number,
  degreesOfFreedom: number,
): number {
  const knowledge = readingKnowledge(rows);
  if (knowledge === ASSUMED_READING) return knowledge.degrees + degreesOfFreedom;
  const variance = scatterFactor * scatterFactor;
  const excess = (variance - 1) ** 2 / Math.max(degreesOfFreedom, 1);
  return variance ** 2 / (1 / STATED_DEGREES + excess);
}
