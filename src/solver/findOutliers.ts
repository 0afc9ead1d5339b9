import { chiSquaredLimit } from '../numeric/chiSquared.ts';
import { fitMarks, modelLengthM } from './fitMarks.ts';
import type { MarksFit } from './fitMarks.ts';
import { median } from '../numeric/median.ts';
import type { Preparation } from './prepareMarks.ts';
import { searchVariance } from './searchOrders.ts';
import type { SpeedPrior } from './searchOrders.ts';
import { coverageFactor } from '../numeric/studentT.ts';

export interface Judgement {
  readonly fit: MarksFit;
  readonly outliers: readonly boolean[];
  /** Marks of which one must be wrong, while the marks can't tell which. */
  readonly suspects: readonly number[];
}

/** A mark this far off is no chance: 1 in 2000. */
const OUTLYING_SHIFT = 3.5;
const OUTLYING_LEVEL = 0.9995;
/** The culprit's shift squared must lead by this much, odds of 7 to 1, to be named. */
const CLEAR_LEAD = 4;
/** End correction over radius of real mouths, and its spread: thin rims 0.61, wide flanges 0.82. A judgement. */
const USUAL_END_RATIO = [0.64, 0.1] as const;
/** ln 1000. */
const COST_OF_BLUNDER = 6.9;
/** A long table may not hold up the page; whoever has more blunders than this has another problem. */
const MOST_ROUNDS = 60;
/** More outliers than this part, and it is no longer the marks that are wrong. */
const MOST_OUTLIERS = 0.4;

/**
 * Fits, and leaves out marks that can't belong, one at a time, each only where it is clear which one is wrong.
 * @param start  speed and end parameter near which most marks fit, from the search for orders
 * @see JCGM 100:2008 says nothing of outliers; the test is the mean-shift outlier model, Cook & Weisberg 1982,
 *   Residuals and Influence in Regression, 2.2
 */
export function findOutliers(
  preparation: Preparation,
  orders: readonly number[],
  start: { readonly speedMps: number; readonly end: number },
  prior: SpeedPrior,
): Judgement {
  const { rows } = preparation;
  const table = { preparation, orders, prior };
  const everyRow = rows.map(() => true);
  const wholeFit = fitMarks(preparation, orders, everyRow);
  if (wholeFit === null) throw new RangeError('rows must hold at least one mark, got none');
  if (rows.length < 3) return { fit: wholeFit, outliers: rows.map(() => false), suspects: [] };

  // Several blunders hide each other in a fit of all marks, so begin with those that agree near the search's best point.
  const misses = rows.map((row, i) => {
    const miss = row.lengthM - modelLengthM(row, orders[i], start.speedMps, start.end);
    return Math.abs(miss) / Math.sqrt(searchVariance(row));
  });
  // Where most are off the point, the lengths are rougher than stated, and being off is no reason to leave.
  const roughness = Math.max(1.5 * median(misses), 1);
  const agrees = misses.map((miss) => miss < 4.5 * roughness);
  const agreeing = agrees.filter(Boolean).length;
  let fitted = agreeing >= Math.max(3, Math.ceil((1 - MOST_OUTLIERS) * rows.length)) ? agrees : everyRow;
  let fit = fitMarks(preparation, orders, fitted) ?? wholeFit;
  const readmitted = new Set<number>();

  const mostOutliers = MOST_OUTLIERS * rows.length;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    if (fitted.filter((is) => !is).length > mostOutliers) break;
    const worst = worstShift(fit);
    if (worst !== null && canLeave({ ...table, fitted, fit }, worst)) {
      fitted = fitted.map((is, i) => is && i !== worst);
      fit = fitMarks(preparation, orders, fitted) ?? fit;
      continue;
    }
    const back = firstReadmissible({ ...table, fitted, fit }, readmitted);
    if (back === null) break;
    readmitted.add(back);
    fitted = fitted.map((is, i) => is || i === back);
    fit = fitMarks(preparation, orders, fitted) ?? fit;
  }

  const left = rows.length - fitted.filter(Boolean).length;
  if (left > mostOutliers || (left > 1 && isRatherRough(wholeFit, fit, rows.length, left))) {
    return { fit: wholeFit, outliers: rows.map(() => false), suspects: [] };
  }
  // A mark that was left out from the start needs the same proof as any other.
  if (left === 1) {
    const only = fitted.indexOf(false);
    if (!canLeave({ ...table, fitted: everyRow, fit: wholeFit }, only)) {
      return { fit: wholeFit, outliers: rows.map(() => false), suspects: suspectsOf(wholeFit) };
    }
  }
  return {
    fit,
    outliers: fitted.map((is) => !is),
    suspects: worstShift(fit) === null ? [] : suspectsOf(fit),
  };
}

/**
 * Whether several marks that don't fit are better told by lengths that are all rougher than stated: log-likelihoods of
 * one common scatter against the stated one with blunders, each of which
 * costs odds of a thousand to one.
 */
function isRatherRough(whole: MarksFit, rest: MarksFit, count: number, blunders: number): boolean {
  if (whole.degreesOfFreedom < 1) return false;
  const scatter = Math.max(whole.chiSquared / whole.degreesOfFreedom, 1);
  const rough = 0.5 * count * Math.log(scatter) + 0.5 * whole.degreesOfFreedom;
  return rough < 0.5 * rest.chiSquared + COST_OF_BLUNDER * blunders;
}

/** The fitted row with the largest shift, if that is no chance. */
function worstShift(fit: MarksFit): number | null {
  let worst: number | null = null;
  let largest = 0;
  for (const [i, shift] of fit.shifts.entries()) {
    if (shift !== null && Math.abs(shift) > largest) {
      worst = i;
      largest = Math.abs(shift);
    }
  }
  return worst !== null && isOutlying(fit, worst) ? worst : null;
}

/**
 * Whether a row's shift is no chance. Where the other rows scatter more than they were said to, they set the measure,
 * with the few degrees of freedom that they have and two for what was stated.
 */
function isOutlying(fit: MarksFit, index: number): boolean {
  const square = squaredShift(fit, index);
  if (square < OUTLYING_SHIFT ** 2) return false;
  const others = fit.degreesOfFreedom - 1;
  const rest = fit.chiSquared - square;
  if (others < 1 || rest < chiSquaredLimit(others, 0.999)) return true;
  return square > coverageFactor(2 + others, OUTLYING_LEVEL) ** 2 * ((2 + rest) / (2 + others));
}

/** Square of a row's shift over its uncertainty; 0 where the fit passes through it whatever it is. */
function squaredShift(fit: MarksFit, index: number): number {
  return (fit.shifts[index] ?? 0) ** 2;
}

/** A table of marks of which some are fitted, and their fit. */
interface PartialFit {
  readonly preparation: Preparation;
  readonly orders: readonly number[];
  readonly prior: SpeedPrior;
  readonly fitted: readonly boolean[];
  readonly fit: MarksFit;
}

/** Whether it is clear that this row is the wrong one: by its lead, else because only without it the rest makes sense. */
function canLeave({ preparation, orders, prior, fitted, fit }: PartialFit, index: number): boolean {
  if (!isOutlying(fit, index)) return false;
  const square = squaredShift(fit, index);
  const rivals = fit.shifts.flatMap((shift, i) =>
    i !== index && shift !== null && shift * shift > square - CLEAR_LEAD ? [i] : [],
  );
  if (fit.degreesOfFreedom > 1 && rivals.length === 0) return true;
  if (rivals.length > 8) return false;
  const oddsAgainst = (left: number): number => {
    const rest = fitMarks(
      preparation,
      orders,
      fitted.map((is, i) => is && i !== left),
    );
    if (rest === null || !isPlausible(preparation, rest, prior)) return Infinity;
    return unusualEnd(preparation, rest) - squaredShift(fit, left);
  };
  const own = oddsAgainst(index);
  return own < Infinity && rivals.every((rival) => oddsAgainst(rival) > own + CLEAR_LEAD);
}

/** How far a measured end correction is from what tubes have, as χ²; it may settle which mark is wrong, no more. */
function unusualEnd({ end, endIsRelative }: Preparation, fit: MarksFit): number {
  if (fit.ownEnd === null) return 0;
  const [usual, width] = endIsRelative ? USUAL_END_RATIO : [end.expected, end.standardUncertainty];
  return ((fit.ownEnd.value - usual) / Math.hypot(width, fit.ownEnd.standardUncertainty)) ** 2;
}

/** Whether a fit's speed and end correction are those of air in a tube, within three uncertainties. */
export function isPlausible({ end }: Preparation, fit: MarksFit, prior: SpeedPrior): boolean {
  const speedSlack = 3 * fit.speedUncertaintyMps;
  const own = fit.ownEnd ?? { value: fit.end, standardUncertainty: fit.endUncertainty };
  const endSlack = 3 * own.standardUncertainty;
  return (
    fit.speedMps > prior.lowestMps - speedSlack &&
    fit.speedMps < prior.highestMps + speedSlack &&
    own.value > end.lowest - endSlack &&
    own.value < end.highest + endSlack
  );
}

/** A row left out that fits after all. */
function firstReadmissible(
  { preparation, orders, fitted, fit }: PartialFit,
  tried: ReadonlySet<number>,
): number | null {
  const waiting = fitted.flatMap((is, i) => (is || tried.has(i) ? [] : [i])).slice(0, 10);
  waiting.sort((one, other) => Math.abs(fit.residualsM[one]) - Math.abs(fit.residualsM[other]));
  for (const candidate of waiting) {
    const wider = fitMarks(
      preparation,
      orders,
      fitted.map((is, i) => is || i === candidate),
    );
    if (wider !== null && wider.shifts[candidate] !== null && !isOutlying(wider, candidate)) return candidate;
  }
  return null;
}

/** Rows whose shift comes near the largest. */
function suspectsOf(fit: MarksFit): number[] {
  const largest = Math.max(...fit.shifts.map((shift) => (shift ?? 0) ** 2));
  return fit.shifts.flatMap((shift, i) =>
    shift !== null && shift * shift > largest - CLEAR_LEAD ? [i] : [],
  );
}
