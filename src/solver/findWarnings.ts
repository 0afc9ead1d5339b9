import { USUAL_AIR } from '../air/airState.ts';
import { HIGHEST_KA } from '../air/endCorrection.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import { chiSquaredLimit } from '../numeric/chiSquared.ts';
import { isEndMeasured } from './fitMarks.ts';
import { airTemperature } from './airTemperature.ts';
import { isPlausible } from './findOutliers.ts';
import type { Judgement } from './findOutliers.ts';
import type { Preparation } from './prepareMarks.ts';
import { mistakenFork } from './mistakenFork.ts';
import { ordersFound, seriesOf } from './ordersFound.ts';
import { otherExplanations } from './otherExplanations.ts';
import { MISFIT_OF_NOISE } from './searchOrders.ts';
import type { OrderSearch, SpeedPrior } from './searchOrders.ts';
import type { Solution, SolvedMark, SolverMark, SolverOptions } from './solution.ts';
import { areOrdersStrange } from './strangeOrders.ts';
import { surplusCopies } from './weightedFit.ts';
import type { MistakenUnit, OrderGap, SolverWarning, SolverWarningCode } from './solverWarning.ts';

export interface Findings {
  /** The marks as they were given, those that can't be used left out. */
  readonly given: readonly SolverMark[];
  readonly options: SolverOptions;
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
/** The same where no diameter is known, m: a tube would have to be 65 mm wide for the upper one. */
const USUAL_END_M: readonly [number, number] = [0, 0.02];
const DOUBTFUL_CONFIDENCE = 0.9;

/** Everything that the user should know before trusting the result, most serious first. */
export function findWarnings(
  findings: Findings,
  solution: Omit<Solution, 'working' | 'warnings'>,
): readonly SolverWarning[] {
  const before = [
    ...aboutOrders(findings),
    ...aboutMarks(findings),
    ...aboutResult(findings, solution),
    ...aboutTable(findings),
  ];
  return [...aboutMeaning(findings, solution, before), ...before, ...aboutKnowledge(findings, solution)];
}

/** Warnings that another meaning of the numbers may explain. */
const PERHAPS_MEANT_OTHERWISE: readonly SolverWarningCode[] = [
  'nothing-fits',
  'end-correction-implausible',
  'speed-implausible',
  'unusual-temperature',
  'differs-from-theory',
  'implausible',
];
/** Longer columns stand in few schools, m. */
const LONGEST_USUAL_M = 2;

/** What else the numbers may mean, where something about them is strange. */
function aboutMeaning(
  findings: Findings,
  { speedMps, standardUncertaintyMps }: Omit<Solution, 'working' | 'warnings'>,
  before: readonly SolverWarning[],
): SolverWarning[] {
  const { given: marks, options, preparation, search, prior, orders } = findings;
  const isStrange =
    before.some(({ code }) => PERHAPS_MEANT_OTHERWISE.includes(code)) ||
    areOrdersStrange(preparation.rows, orders) ||
    preparation.rows.some(({ lengthM }) => lengthM > LONGEST_USUAL_M);
  // Whoever sets the speeds that are possible, or the orders, says what is meant.
  if (!isStrange || options.speedRangeMps !== undefined || marks.some(({ order }) => order !== null))
    return [];
  const speedUncertainty = standardUncertaintyMps / speedMps;
  const found = otherExplanations({ marks, options, preparation, search, prior, speedUncertainty });
  return found.explanations.length === 0 ? [] : [{ code: 'other-explanation', ...found }];
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
  return [...ordersFound(rows, orders)].flatMap(([series, found]) => {
    const missing = Array.from({ length: Math.max(...found) }, (_, i) => i + 1).filter(
      (order) => !found.has(order),
    );
    if (missing.length === 0) return [];
    const { ends, mark } = rows.filter((row) => seriesOf(row) === series)[0];
    return [{ frequencyHz: mark.frequencyHz, ends, orders: missing }];
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
  if (fit.unchecked.length > 0 && judgement.outliers.filter((is) => !is).length > 1) {
    const keys = fit.unchecked.map((i) => preparation.rows[i].mark.key);
    const isAll = keys.length === judgement.outliers.filter((is) => !is).length;
    warnings.push({ code: 'unchecked', keys, isAll });
  }
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
  const { endIsRelative } = preparation;
  const warnings: SolverWarning[] = [];
  const [lowest, highest] = endIsRelative ? USUAL_END : USUAL_END_M;
  const { ownEnd } = fit;
  const slack = 2.5 * (ownEnd?.standardUncertainty ?? 0);
  if (ownEnd !== null && (ownEnd.value < lowest - slack || ownEnd.value > highest + slack)) {
    warnings.push({
      code: 'end-correction-implausible',
      endCorrectionM: solution.endCorrectionOfMarks?.endCorrectionM ?? solution.endCorrectionM,
      endCorrectionRatio: endIsRelative ? ownEnd.value : null,
    });
  }
  const speedSlack = 3 * solution.standardUncertaintyMps;
  const { speedMps, agreement, theory } = solution;
  const { lowestMps, highestMps } = prior;
  if (theory === null) warnings.push(...aboutTemperature(solution));
  const isOutside = speedMps < lowestMps - speedSlack || speedMps > highestMps + speedSlack;
  if (isOutside) warnings.push({ code: 'speed-implausible', speedMps, lowestMps, highestMps });
  if (agreement !== null && theory !== null && Math.abs(agreement.normalisedError) > 1) {
    const relative = solution.standardUncertaintyMps / speedMps;
    const fork = mistakenFork(preparation.rows, speedMps / theory.speedMps, relative);
    warnings.push({
      code: 'differs-from-theory',
      differenceMps: agreement.differenceMps,
      agreeingForkHz: fork?.fittingHz ?? null,
    });
  }
  if (!isOutside && warnings.length === 0 && !isPlausible(preparation, fit, prior)) {
    warnings.push({ code: 'implausible' });
  }
  return warnings;
}

/** Rooms in which lessons are held, °C. Common practice, no source. */
const ROOM_TEMPERATURES_C = [10, 35] as const;

/** Without a thermometer the speed itself says how warm the air would have to be. */
function aboutTemperature({
  speedMps,
  standardUncertaintyMps,
}: Omit<Solution, 'working' | 'warnings'>): SolverWarning[] {
  const [coldest, warmest] = ROOM_TEMPERATURES_C.map(
    (temperatureC) => speedOfSound({ ...USUAL_AIR, temperatureC }).speedMps,
  );
  const isCold = speedMps + standardUncertaintyMps < coldest;
  if (!isCold && speedMps - standardUncertaintyMps < warmest) return [];
  const air = airTemperature({ speedMps, standardUncertaintyMps });
  return [{ code: 'unusual-temperature', temperatureC: air?.temperatureC ?? null, isCold }];
}

/** What was typed, whatever it gives. */
function aboutTable({ preparation: { rows } }: Findings): SolverWarning[] {
  const warnings: SolverWarning[] = [];
  const copies = surplusCopies(rows);
  if (copies > 0) warnings.push({ code: 'exact-repeats', copies });
  const frequencies = new Map<number, Set<number>>();
  for (const { fork, mark } of rows) {
    frequencies.set(fork, (frequencies.get(fork) ?? new Set()).add(mark.frequencyHz));
  }
  for (const alike of frequencies.values()) {
    if (alike.size > 1) warnings.push({ code: 'forks-alike', frequenciesHz: [...alike] });
  }
  const widest = rows.reduce((one, other) => (other.ka > one.ka ? other : one));
  if (widest.ka > HIGHEST_KA) {
    const { frequencyHz, radiusM } = widest.mark;
    warnings.push({ code: 'tube-too-wide', diameterM: 2 * (radiusM ?? 0), frequencyHz, ka: widest.ka });
  }
  return warnings;
}

function aboutKnowledge(
  { preparation, judgement: { fit } }: Findings,
  { speedMps, standardUncertaintyMps, coverageFactor }: Omit<Solution, 'working' | 'warnings'>,
): SolverWarning[] {
  const warnings: SolverWarning[] = [];
  const used = fit.speedWeights.filter((weight) => weight !== 0).length;
  if (used === 1) warnings.push({ code: 'too-few-marks' });
  if (!isEndMeasured(fit)) {
    warnings.push({
      code: preparation.endIsRelative ? 'end-correction-from-theory' : 'end-correction-unknown',
    });
  }
  if (!preparation.wallsRemoved) warnings.push({ code: 'no-diameter' });
  if (preparation.someDiametersMissing) warnings.push({ code: 'some-diameters-missing' });
  if (preparation.someTemperaturesMissing) warnings.push({ code: 'some-temperatures-missing' });
  if (preparation.theory === null) {
    const air = airTemperature({ speedMps, standardUncertaintyMps });
    warnings.push({
      code: 'no-temperature',
      temperatureC: air?.temperatureC ?? null,
      expandedUncertaintyC: coverageFactor * (air?.standardUncertaintyC ?? 0),
    });
  }
  if (preparation.theory?.withinValidity === false) warnings.push({ code: 'air-beyond-formula' });
  return warnings;
}
