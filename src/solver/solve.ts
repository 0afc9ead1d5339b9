import { coverageFactor } from '../numeric/studentT.ts';
import { betterColumnType, betterLengthUnit } from './betterTable.ts';
import { checkMarks } from './checkMarks.ts';
import { effectiveDegreesOfFreedom } from './effectiveDegreesOfFreedom.ts';
import { findOutliers } from './findOutliers.ts';
import { findWarnings } from './findWarnings.ts';
import { isEndMeasured } from './fitMarks.ts';
import type { MarksFit } from './fitMarks.ts';
import { judgeMarks } from './judgeMarks.ts';
import { oneEndCorrectionM, prepareMarks } from './prepareMarks.ts';
import type { Preparation } from './prepareMarks.ts';
import { nearestOrder, searchOrders } from './searchOrders.ts';
import type { SpeedPrior } from './searchOrders.ts';
import type { NoSolution, Solution, SolvedMark, SolverMark, SolverOptions } from './solution.ts';
import { repeatability } from './repeatability.ts';
import { speedBudget } from './speedBudget.ts';
import { workingSteps } from './workingSteps.ts';

/** Dry air at −10 °C to saturated air at 45 °C, m/s, from Cramer's formula. */
const AIR_SPEEDS_MPS = [325.3, 364] as const;

/**
 * The speed of sound from marks, all taken as one place: orders, fit, uncertainty, judgement and working. Marks whose
 * air differs are referred to their mean air by theory's ratio.
 * @param marks  any number; marks with impossible numbers are left out and named in a warning
 * @returns the solution, or why there is none; never throws for bad marks
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30');
 * solve(marksOfRows(rows)).speedMps.toFixed(1) // → '344.6'
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

/**
 * As `solve`, with the fit beside the solution.
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30');
 * solveInFull(marksOfRows(rows)).orders // → [1, 2]
 */
export function solveInFull(
  marks: readonly SolverMark[],
  options: SolverOptions = {},
): FullSolution | NoSolution {
  const place = marks.at(0)?.place ?? '';
  const { usable, faults } = checkMarks(marks);
  const without = (code: 'no-marks' | 'no-orders' | 'contradiction'): NoSolution => ({
    place,
    speedMps: null,
    warnings: [...faults, { code }],
  });
  if (usable.length === 0) return without('no-marks');
  const preparation = prepareMarks(usable, options);
  const [lowestMps, highestMps] = options.speedRangeMps ?? airSpeedsMps(preparation);
  const prior: SpeedPrior = {
    lowestMps,
    highestMps,
    expectedMps: options.speedRangeMps === undefined ? (preparation.theory?.speedMps ?? null) : null,
  };
  const search = searchOrders(preparation.rows, prior, preparation.end);
  const best = search.candidates.at(0);
  if (best === undefined) return without('no-orders');
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
  if (!(fit.speedMps > 0)) return without('contradiction');
  const solvedMarks = judgeMarks({ preparation, search, orders, fit, outliers: judgement.outliers });
  const solution = assemble(place, preparation, { fit, orders }, solvedMarks);
  const findings = {
    given: usable,
    options,
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
      working: workingSteps(preparation, orders, fit, solution),
      warnings: [...faults, ...findWarnings(findings, solution)],
    },
    fit,
    preparation,
    orders,
    outliers: judgement.outliers,
  };
}

/**
 * Speeds that the tube's air may have: what is usual, and what theory says of air that was read to be colder or warmer
 * than that. Another gas may be mixed with air, or warmer than was read.
 */
function airSpeedsMps({ theory, air }: Preparation): readonly [number, number] {
  const [lowest, highest] = AIR_SPEEDS_MPS;
  if (theory === null) return AIR_SPEEDS_MPS;
  if (air !== null && air.filling !== 'air') return [0.9 * theory.speedMps, 1.1 * theory.speedMps];
  return [Math.min(lowest, 0.99 * theory.speedMps), Math.max(highest, 1.01 * theory.speedMps)];
}

function assemble(
  place: string,
  preparation: Preparation,
  { fit, orders }: { readonly fit: MarksFit; readonly orders: readonly number[] },
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
    endCorrectionOfMarks:
      fit.ownEnd === null
        ? null
        : {
            endCorrectionM: fit.ownEnd.value * perEnd,
            standardUncertaintyM: fit.ownEnd.standardUncertainty * perEnd,
          },
    speedEndCorrelation: fit.correlation,
    endCorrectionSource: isEndMeasured(fit) ? 'measured' : preparation.endIsRelative ? 'theory' : 'assumed',
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
    repeatability: repeatability(
      preparation.rows.flatMap(({ lengthM, setup, mark }, i) =>
        fit.speedWeights[i] === 0 ? [] : [{ lengthM, setup, order: orders[i], copies: mark.copies ?? 1 }],
      ),
    ),
    marks,
    budget: speedBudget(preparation, fit),
  };
}
