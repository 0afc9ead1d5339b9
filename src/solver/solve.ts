import { checkMarks } from './checkMarks.ts';
import { findOutliers } from './findOutliers.ts';
import { fitMarks } from './fitMarks.ts';
import type { MarksFit } from './fitMarks.ts';
import { companyOf, likelyCause } from './likelyCause.ts';
import type { Company } from './likelyCause.ts';
import { oneEndCorrectionM, prepareMarks } from './prepareMarks.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';
import { nearestOrder, searchOrders } from './searchOrders.ts';
import type { OrderSearch, SpeedPrior } from './searchOrders.ts';
import type { NoSolution, Solution, SolvedMark, SolverMark, SolverOptions } from './solution.ts';
import { coverageFactor } from './studentT.ts';
import { writeWarnings } from './warnings.ts';
import { inWords } from './wording.ts';
import { effectiveDegreesOfFreedom, writeBudget } from './writeBudget.ts';
import { writeWorking } from './writeWorking.ts';

/** Dry air at −10 °C to saturated air at 45 °C, m/s, from Cramer's formula. */
const AIR_SPEEDS_MPS = [325.3, 364] as const;
/** Misfit beyond which the other column type is tried. */
const POOR_MISFIT = 8;
/** Confidence that is left where air's or tubes' usual limits had to be given up. */
const STRETCHED_CONFIDENCE = { none: 1, end: 0.8, speed: 0.5 } as const;

/**
 * The speed of sound from marks, all taken as one place: orders, fit, uncertainty, judgement and working. Marks whose
 * air differs are referred to their mean air by theory's ratio.
 * @param marks  any number; marks with impossible numbers are left out and named in a warning
 * @returns the solution, or why there is none; never throws for bad marks
 */
export function solve(marks: readonly SolverMark[], options: SolverOptions = {}): Solution | NoSolution {
  const solved = solveInFull(marks, options);
  return 'fit' in solved ? solved.solution : solved;
}

/** A solution with what it was made of, for comparing and planning. */
export interface FullSolution {
  readonly solution: Solution;
  readonly fit: MarksFit;
  readonly preparation: Preparation;
  readonly orders: readonly number[];
  readonly outliers: readonly boolean[];
}

/** As `solve`, with the fit beside the solution. */
export function solveInFull(
  marks: readonly SolverMark[],
  options: SolverOptions = {},
): FullSolution | NoSolution {
  const place = marks.at(0)?.place ?? '';
  const { usable, faults } = checkMarks(marks);
  if (usable.length === 0) {
    const message = 'There is no mark with a usable length yet. Mark a resonance and read its length.';
    return { place, speedMps: null, warnings: [...faults, { code: 'no-marks', message }] };
  }
  const preparation = prepareMarks(usable, options);
  const [lowestMps, highestMps] = options.speedRangeMps ?? airSpeedsMps(preparation);
  const prior: SpeedPrior = {
    lowestMps,
    highestMps,
    expectedMps: options.speedRangeMps === undefined ? (preparation.theory?.speedMps ?? null) : null,
  };
  const search = searchOrders(preparation.rows, prior, preparation.end);
  const best = search.candidates.at(0);
  if (best === undefined) {
    const message = 'No assignment of orders fits these marks.';
    return { place, speedMps: null, warnings: [...faults, { code: 'no-orders', message }] };
  }
  let { orders } = best;
  let judgement = findOutliers(preparation, orders, best, prior);
  // The search's grid is coarse: orders far up the tube may round differently once speed and end are fitted.
  for (let round = 0; round < 4; round += 1) {
    const { speedMps, end } = judgement.fit;
    const nearest = preparation.rows.map((row) => row.mark.order ?? nearestOrder(row, speedMps, end));
    if (nearest.every((order, i) => order === orders[i])) break;
    if (!(speedMps > 0.97 * prior.lowestMps && speedMps < 1.03 * prior.highestMps)) break;
    orders = nearest;
    judgement = findOutliers(preparation, orders, { speedMps, end }, prior);
  }

  const { fit } = judgement;
  if (!(fit.speedMps > 0)) {
    const message =
      'With these orders longer columns would have shorter waves. Check the lengths and the orders that were set.';
    return { place, speedMps: null, warnings: [...faults, { code: 'contradiction', message }] };
  }
  const solvedMarks = describeMarks(preparation, search, orders, fit, judgement.outliers);
  const solution = assemble(place, preparation, fit, solvedMarks);
  const findings = {
    preparation,
    search,
    judgement,
    prior,
    orders,
    marks: solvedMarks,
    betterType: betterColumnType(usable, options, search, prior),
    betterUnit: betterLengthUnit(usable, options, search, prior),
  };
  return {
    solution: {
      ...solution,
      working: writeWorking(preparation, orders, fit, solution),
      warnings: [...faults, ...writeWarnings(findings, solution)],
    },
    fit,
    preparation,
    orders,
    outliers: judgement.outliers,
  };
}

/** Speeds that air may have: what is usual, and what theory says of air that was read to be colder or warmer than that. */
function airSpeedsMps({ theory }: Preparation): readonly [number, number] {
  const [lowest, highest] = AIR_SPEEDS_MPS;
  if (theory === null) return AIR_SPEEDS_MPS;
  return [Math.min(lowest, 0.99 * theory.speedMps), Math.max(highest, 1.01 * theory.speedMps)];
}

function assemble(
  place: string,
  preparation: Preparation,
  fit: MarksFit,
  marks: readonly SolvedMark[],
): Omit<Solution, 'working' | 'warnings'> {
  const standardUncertaintyMps = Math.sqrt(
    fit.contributions.reduce((sum, { contributionMps }) => sum + contributionMps ** 2, 0),
  );
  const degrees = effectiveDegreesOfFreedom(fit.contributions);
  const factor = coverageFactor(degrees);
  const used = preparation.rows.filter((_, i) => fit.speedWeights[i] !== 0);
  const perEnd = used.reduce((sum, row) => sum + oneEndCorrectionM(row, 1), 0) / used.length;
  const { theory } = preparation;
  const differenceMps = theory === null ? 0 : fit.speedMps - theory.speedMps;
  return {
    place,
    speedMps: fit.speedMps,
    standardUncertaintyMps,
    expandedUncertaintyMps: factor * standardUncertaintyMps,
    coverageFactor: factor,
    effectiveDegreesOfFreedom: degrees,
    endCorrectionM: fit.end * perEnd,
    endCorrectionStandardUncertaintyM: fit.endUncertainty * perEnd,
    endCorrectionSource: fit.mode === 'free' ? 'measured' : preparation.endIsRelative ? 'theory' : 'assumed',
    theory:
      theory === null
        ? null
        : { speedMps: theory.speedMps, standardUncertaintyMps: theory.standardUncertaintyMps },
    agreement:
      theory === null
        ? null
        : {
            differenceMps,
            differencePct: (100 * differenceMps) / theory.speedMps,
            normalisedError:
              differenceMps / Math.hypot(factor * standardUncertaintyMps, 2 * theory.standardUncertaintyMps),
          },
    air: preparation.air,
    scatterFactor: fit.scatterFactor,
    marks,
    budget: writeBudget(preparation, fit),
  };
}

function describeMarks(
  preparation: Preparation,
  search: OrderSearch,
  orders: readonly number[],
  fit: MarksFit,
  outliers: readonly boolean[],
): SolvedMark[] {
  const { rows } = preparation;
  const everyRow = rows.map(() => true);
  // What each of the next assignments would mean, fitted only where somebody will read it.
  const rivals = search.candidates
    .filter(
      (candidate) => candidate.share > 0.001 && candidate.orders.some((order, i) => order !== orders[i]),
    )
    .slice(0, 6)
    .map((candidate) => ({ ...candidate, fit: fitMarks(preparation, candidate.orders, everyRow) }));

  const company = outliers.some((is) => is) ? companyOf(rows, fit.speedMps, fit.end) : null;
  return rows.map((row, i): SolvedMark => {
    const order = orders[i] ?? 1;
    const residualM = fit.residualsM[i] ?? 0;
    const outlier = outliers[i] ?? false;
    const agreeing = search.candidates.reduce(
      (sum, candidate) => (candidate.orders[i] === order ? sum + candidate.share : sum),
      0,
    );
    // Halfway between two resonances either order is as good.
    const quarterWaveM = (row.halfWavePerSpeedS * fit.speedMps) / 2;
    const between = Math.min(Math.abs(residualM) / quarterWaveM, 1);
    const rival = rivals.find((candidate) => candidate.orders[i] !== order);
    const rivalFit = rival?.fit ?? null;
    return {
      key: row.mark.key,
      order,
      orderConfidence:
        row.mark.order === order
          ? 1
          : Math.min(agreeing, 1) * (1 - 0.5 * between * between) * STRETCHED_CONFIDENCE[search.stretched],
      runnerUp:
        rival === undefined || rivalFit === null
          ? null
          : {
              order: rival.orders[i] ?? 1,
              reason: `would mean ${inWords(rivalFit.speedMps, 1)} m/s and an end correction of ${inWords(oneEndCorrectionM(row, rivalFit.end) * 1000, 1)} mm: ${inWords(rival.share * 100, 1)} % likely`,
            },
      residualM,
      outlier,
      cause: outlier && company !== null ? causeOf(row, order, residualM, fit, company) : null,
    };
  });
}

function causeOf(
  row: PreparedMark,
  order: number,
  residualM: number,
  fit: MarksFit,
  company: Company,
): string {
  const nearest = nearestOrder(row, fit.speedMps, fit.end);
  if (row.mark.order !== null && nearest !== order)
    return `Order ${order} was set, but the length fits order ${nearest}.`;
  return likelyCause(row, residualM, fit.speedMps, fit.end, company);
}

/** Whether the marks of one column type would fit well as the other. */
function betterColumnType(
  marks: readonly SolverMark[],
  options: SolverOptions,
  search: OrderSearch,
  prior: SpeedPrior,
): { readonly from: 'closed' | 'open'; readonly to: 'closed' | 'open' } | null {
  if (search.misfit < POOR_MISFIT) return null;
  let best: ReturnType<typeof betterColumnType> = null;
  let lowest = search.misfit - 6;
  for (const [from, to] of [
    ['closed', 'open'],
    ['open', 'closed'],
  ] as const) {
    if (!marks.some(({ ends }) => ends === from)) continue;
    const flipped = prepareMarks(
      marks.map((mark) => (mark.ends === from ? { ...mark, ends: to, order: null } : mark)),
      options,
    );
    const { misfit } = searchOrders(flipped.rows, prior, flipped.end, false);
    if (misfit < lowest) {
      best = { from, to };
      lowest = misfit;
    }
  }
  return best;
}

/** What people write without saying so, over the metre that was understood. */
const MISTAKEN_UNITS = [
  { name: 'millimetres', factor: 0.1 },
  { name: 'inches', factor: 2.54 },
  { name: 'centimetres', factor: 10 },
] as const;

/** Whether the numbers of the lengths fit in another unit, all of them and from the first resonances on. */
function betterLengthUnit(
  marks: readonly SolverMark[],
  options: SolverOptions,
  search: OrderSearch,
  prior: SpeedPrior,
): string | null {
  if (search.misfit < POOR_MISFIT || marks.length < 2) return null;
  for (const { name, factor } of MISTAKEN_UNITS) {
    const scaled = marks.map((mark) => ({
      ...mark,
      lengthM: mark.lengthM * factor,
      otherLengthM: mark.otherLengthM === null ? null : mark.otherLengthM * factor,
      order: null,
    }));
    const { rows, end } = prepareMarks(scaled, options);
    const found = searchOrders(rows, prior, end, false);
    const lowest = Math.min(...(found.candidates.at(0)?.orders ?? [Infinity]));
    if (found.misfit < Math.min(POOR_MISFIT, search.misfit - 6) && lowest <= 2) return name;
  }
  return null;
}
