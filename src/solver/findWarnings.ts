import type { ColumnEnds } from '../marks/mark.ts';
import { chiSquaredLimit } from '../numeric/chiSquared.ts';
import type { MarksFit } from './fitMarks.ts';
import { isPlausible } from './findOutliers.ts';
import type { Judgement } from './findOutliers.ts';
import type { Preparation } from './prepareMarks.ts';
import { MISFIT_OF_NOISE } from './searchOrders.ts';
import type { OrderSearch, SpeedPrior } from './searchOrders.ts';
import type { Solution, SolvedMark } from './solution.ts';
import type { MistakenUnit, OrderGap, SolverWarning } from './solverWarning.ts';

export interface Findings {
  readonly preparation: Preparation;
  readonly search: OrderSearch;
  readonly judgement: Judgement;
  readonly prior: SpeedPrior;
  readonly orders: readonly number[];
  readonly marks: readonly SolvedMark[];
  /** Column type that fits where the noted one doesn't; null where there is none. */
  readonly betterType: { readonly notedEnds: ColumnEnds; readonly fittingEnds: ColumnEnds } | null;
  /** Unit in which the lengths' numbers fit where they don't as noted; null where there is none. */
  readonly betterUnit: MistakenUnit | null;
}

/** Where theory and practice of e over the radius end: thin rims 0.6, wide flanges 0.82, a fork near the mouth more. */
const USUAL_END: readonly [number, number] = [0.4, 0.95];
const DOUBTFUL_CONFIDENCE = 0.9;

/** Everything that the user should know before trusting the result, most serious first. */
export function findWarnings(
  findings: Findings,
  solution: Omit<Solution, 'working' | 'warnings'>,
): readonly SolverWarning[] {
  return [
    ...aboutOrders(findings),
    ...aboutMarks(findings),
    ...aboutResult(findings, solution),
    ...aboutKnowledge(findings.preparation, findings.judgement.fit),
  ];
}

function aboutOrders(findings: Findings): SolverWarning[] {
  const { preparation, search, judgement, prior, marks, orders, betterType, betterUnit } = findings;
  const warnings: SolverWarning[] = [];
  if (search.marksMisfit > MISFIT_OF_NOISE * search.sampled) {
    warnings.push({ code: 'nothing-fits', hasDiameter: preparation.endIsRelative });
  }
  if (betterType !== null) warnings.push({ code: 'column-type', ...betterType });
  if (betterUnit !== null) warnings.push({ code: 'length-unit', unit: betterUnit });
  const doubtful = marks.filter(
    ({ orderConfidence, outlier }) => orderConfidence < DOUBTFUL_CONFIDENCE && !outlier,
  );
  if (doubtful.length > 0) {
    warnings.push({
      code: 'order-ambiguous',
      marks: doubtful.map(({ key, order, orderConfidence, runnerUp }) => ({
        key,
        order,
        orderConfidence,
        runnerUpOrder: runnerUp?.order ?? null,
      })),
    });
  }
  const isStrange = search.stretched === 'speed' || !isPlausible(preparation, judgement.fit, prior);
  const contradicted = preparation.rows.filter(
    ({ mark }, i) => mark.order !== null && (marks[i].outlier === true || isStrange),
  );
  if (contradicted.length > 0) {
    warnings.push({ code: 'order-doubtful', keys: contradicted.map(({ mark }) => mark.key) });
  }
  const gaps = orderGaps(preparation, orders);
  if (gaps.length > 0) warnings.push({ code: 'skipped-orders', gaps });
  return warnings;
}

function orderGaps({ rows }: Preparation, orders: readonly number[]): OrderGap[] {
  const seen = new Map<string, Pick<OrderGap, 'frequencyHz' | 'ends'> & { readonly found: Set<number> }>();
  for (const [i, row] of rows.entries()) {
    const key = `${row.fork} ${row.ends}`;
    const group = seen.get(key) ?? { frequencyHz: row.mark.frequencyHz, ends: row.ends, found: new Set() };
    group.found.add(orders[i]);
    seen.set(key, group);
  }
  return [...seen.values()].flatMap(({ frequencyHz, ends, found }) => {
    const missing = Array.from({ length: Math.max(...found) }, (_, i) => i + 1).filter(
      (order) => !found.has(order),
    );
    return missing.length === 0 ? [] : [{ frequencyHz, ends, orders: missing }];
  });
}

/** More of them tell a reader nothing more. */
const MOST_OUTLIERS_NAMED = 20;

function aboutMarks({ preparation, judgement, marks }: Findings): SolverWarning[] {
  const warnings: SolverWarning[] = marks
    .flatMap(({ key, cause }): SolverWarning[] => (cause === null ? [] : [{ code: 'outlier', key, cause }]))
    .slice(0, MOST_OUTLIERS_NAMED);
  if (judgement.suspects.length > 0) {
    const keys = judgement.suspects.map((i) => preparation.rows[i].mark.key);
    warnings.push({ code: 'inconsistent', keys });
  }
  const { fit } = judgement;
  if (fit.degreesOfFreedom > 0 && fit.chiSquared > chiSquaredLimit(fit.degreesOfFreedom)) {
    warnings.push({ code: 'scatter', factor: Math.sqrt(fit.chiSquared / fit.degreesOfFreedom) });
  }
  for (const row of preparation.rows) {
    const { otherLengthM, lengthM, key } = row.mark;
    if (otherLengthM === null) continue;
    const widthM = Math.abs(otherLengthM - lengthM);
    if (widthM > 0.25 * row.halfWavePerSpeedS * fit.speedMps) warnings.push({ code: 'bracket-wide', key });
  }
  return warnings;
}

function aboutResult(
  { preparation, judgement, prior }: Findings,
  solution: Omit<Solution, 'working' | 'warnings'>,
): SolverWarning[] {
  const { fit } = judgement;
  const { endIsRelative, end } = preparation;
  const warnings: SolverWarning[] = [];
  const slack = 2.5 * fit.endUncertainty;
  const [lowest, highest] = endIsRelative ? USUAL_END : [end.lowest, end.highest];
  if (fit.mode === 'free' && (fit.end < lowest - slack || fit.end > highest + slack)) {
    warnings.push({
      code: 'end-correction-implausible',
      endCorrectionM: solution.endCorrectionM,
      endCorrectionRatio: endIsRelative ? fit.end : null,
    });
  }
  const speedSlack = 3 * solution.standardUncertaintyMps;
  const { speedMps, agreement } = solution;
  const { lowestMps, highestMps } = prior;
  const isOutside = speedMps < lowestMps - speedSlack || speedMps > highestMps + speedSlack;
  if (isOutside) warnings.push({ code: 'speed-implausible', speedMps, lowestMps, highestMps });
  if (agreement !== null && Math.abs(agreement.normalisedError) > 1) {
    warnings.push({
      code: 'differs-from-theory',
      differenceMps: agreement.differenceMps,
      agreeingForkHz: agreeingForkHz(preparation, solution),
    });
  }
  if (!isOutside && warnings.length === 0 && !isPlausible(preparation, fit, prior)) {
    warnings.push({ code: 'implausible' });
  }
  return warnings;
}

/** Frequency of a single fork with which the result would agree with theory, where that is further off than a stamp can be. */
function agreeingForkHz(
  { rows }: Preparation,
  { speedMps, theory }: Omit<Solution, 'working' | 'warnings'>,
): number | null {
  const frequencies = new Set(rows.map(({ mark }) => mark.frequencyHz));
  const [hz] = frequencies;
  if (frequencies.size !== 1 || hz === undefined || theory === null) return null;
  const needed = theory.speedMps / speedMps;
  return Math.abs(needed - 1) < 0.01 ? null : needed * hz;
}

function aboutKnowledge(preparation: Preparation, fit: MarksFit): SolverWarning[] {
  const warnings: SolverWarning[] = [];
  const used = fit.speedWeights.filter((weight) => weight !== 0).length;
  if (used === 1) warnings.push({ code: 'too-few-marks' });
  if (fit.mode === 'theory') {
    warnings.push({
      code: preparation.endIsRelative ? 'end-correction-from-theory' : 'end-correction-unknown',
    });
  }
  if (!preparation.wallsRemoved) warnings.push({ code: 'no-diameter' });
  if (preparation.someDiametersMissing) warnings.push({ code: 'some-diameters-missing' });
  if (preparation.someTemperaturesMissing) warnings.push({ code: 'some-temperatures-missing' });
  if (preparation.theory === null) warnings.push({ code: 'no-temperature' });
  else if (!preparation.theory.withinValidity) warnings.push({ code: 'air-beyond-formula' });
  return warnings;
}
