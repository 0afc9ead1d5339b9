import type { Solution, SolverMark } from '../../src/solver/solution.ts';
import { solve } from '../../src/solver/solve.ts';
import { makeLocated } from './locatedExperiments.ts';
import type { Locating } from './locatedExperiments.ts';
import { makeExperiment, randomFrom, USUAL_MAKING } from './solverExperiments.ts';
import type { MadeExperiment, Making } from './solverExperiments.ts';

/** What a run of many made-up experiments showed. */
export interface ResultElement {
  readonly experiments: number;
  readonly marks: number;
  readonly ordersRightPct: number;
  /** Of the wrong ones: stated confidence, mean. */
  readonly wrongConfidence: number | null;
  /** Wrong orders that the solver was sure of (confidence above 0.9). */
  readonly confidentlyWrong: number;
  readonly biasPct: number;
  readonly biasStandardErrorPct: number;
  readonly spreadPct: number;
  readonly coveragePct: number;
  readonly falseOutliersPct: number;
  readonly differenceMethod: Rival;
  readonly firstResonance: Rival;
}

interface Rival {
  readonly experiments: number;
  readonly biasPct: number;
  /** Root of the mean squared error, bias included. */
  readonly errorPct: number;
  /** The solver's in the very same experiments. */
  readonly solverErrorPct: number;
}

export interface BlunderResult {
  readonly experiments: number;
  readonly foundPct: number;
  /** The right mark found and no other blamed. */
  readonly foundAlonePct: number;
  /** Found, or at least said to be inconsistent. */
  readonly noticedPct: number;
  readonly coveragePct: number;
}

/** Solves `count` experiments from one seed. */
export function benchSolver(count: number, seed: number, making: Making = USUAL_MAKING): ResultElement {
  const random = randomFrom(seed);
  const errors: number[] = [];
  const difference: Pair[] = [];
  const first: Pair[] = [];
  const wrong: number[] = [];
  let marks = 0;
  let covered = 0;
  let blamed = 0;
  for (let i = 0; i < count; i += 1) {
    const experiment = makeExperiment(random, making);
    const solution = solveOrFail(experiment.marks);
    for (const [j, mark] of solution.marks.entries()) {
      marks += 1;
      if (mark.outlier) blamed += 1;
      if (mark.order !== experiment.trueOrders[j]) wrong.push(mark.orderConfidence);
    }
    const error = solution.speedMps - experiment.trueSpeedMps;
    const errorPct = (100 * error) / experiment.trueSpeedMps;
    errors.push(errorPct);
    if (Math.abs(error) <= solution.expandedUncertaintyMps) covered += 1;
    const byDifference = differenceMethodMps(experiment);
    if (byDifference !== null)
      difference.push([100 * (byDifference / experiment.trueSpeedMps - 1), errorPct]);
    const byFirst = firstResonanceMps(experiment);
    if (byFirst !== null) first.push([100 * (byFirst / experiment.trueSpeedMps - 1), errorPct]);
  }
  return {
    experiments: count,
    marks,
    ordersRightPct: 100 * (1 - wrong.length / marks),
    wrongConfidence: wrong.length === 0 ? null : mean(wrong),
    confidentlyWrong: wrong.filter((confidence) => confidence > 0.9).length,
    biasPct: mean(errors),
    biasStandardErrorPct: spread(errors) / Math.sqrt(errors.length),
    spreadPct: spread(errors),
    coveragePct: (100 * covered) / count,
    falseOutliersPct: (100 * blamed) / marks,
    differenceMethod: summarise(difference),
    firstResonance: summarise(first),
  };
}

/** Moves one length of each experiment (5 to 8 marks) by a centimetre and looks whether it is found. */
export function benchBlunders(count: number, seed: number, blunderM = 0.01): BlunderResult {
  const random = randomFrom(seed);
  let found = 0;
  let alone = 0;
  let noticed = 0;
  let covered = 0;
  for (let i = 0; i < count; i += 1) {
    const experiment = makeExperiment(random, { ...USUAL_MAKING, fewest: 5 });
    const victim = Math.floor(random() * experiment.marks.length);
    const sign = random() < 0.5 ? -1 : 1;
    const solution = solveOrFail(
      experiment.marks.map((mark, j) =>
        j === victim ? { ...mark, lengthM: mark.lengthM + sign * blunderM } : mark,
      ),
    );
    const isFound = solution.marks[victim]?.outlier === true;
    if (isFound) found += 1;
    if (isFound && solution.marks.filter(({ outlier }) => outlier).length === 1) alone += 1;
    if (isFound || solution.warnings.some(({ code }) => code === 'inconsistent')) noticed += 1;
    if (Math.abs(solution.speedMps - experiment.trueSpeedMps) <= solution.expandedUncertaintyMps)
      covered += 1;
  }
  return {
    experiments: count,
    foundPct: (100 * found) / count,
    foundAlonePct: (100 * alone) / count,
    noticedPct: (100 * noticed) / count,
    coveragePct: (100 * covered) / count,
  };
}

/** A textbook method's error and the solver's in the same experiment, %. */
type Pair = readonly [rival: number, solver: number];

function summarise(pairs: readonly Pair[]): Rival {
  const rootMeanSquare = (values: readonly number[]): number =>
    Math.sqrt(mean(values.map((value) => value * value)));
  return {
    experiments: pairs.length,
    biasPct: mean(pairs.map(([rival]) => rival)),
    errorPct: rootMeanSquare(pairs.map(([rival]) => rival)),
    solverErrorPct: rootMeanSquare(pairs.map(([, solver]) => solver)),
  };
}

/** Textbook: two lengths of one fork, their orders known, v = 2fΔL/Δn; no walls, no weights. */
function differenceMethodMps({ marks, trueOrders }: MadeExperiment): number | null {
  for (const [i, one] of marks.entries()) {
    for (let j = i + 1; j < marks.length; j += 1) {
      const other = marks[j];
      if (other === undefined || other.forkKey !== one.forkKey || other.ends !== one.ends) continue;
      const orders = (trueOrders[j] ?? 0) - (trueOrders[i] ?? 0);
      return (2 * one.frequencyHz * (other.lengthM - one.lengthM)) / orders;
    }
  }
  return null;
}

/** Textbook: the first resonance of a closed column with e = 0.3 d. */
function firstResonanceMps({ marks, trueOrders }: MadeExperiment): number | null {
  const index = marks.findIndex((mark, i) => mark.ends === 'closed' && trueOrders[i] === 1);
  const mark = marks[index];
  return mark === undefined ? null : 4 * mark.frequencyHz * (mark.lengthM + 0.6 * (mark.radiusM ?? 0));
}

function solveOrFail(marks: readonly SolverMark[]): Solution {
  const solution = solve(marks);
  if (solution.speedMps === null) throw new Error('a good experiment got no solution');
  return solution;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function spread(values: readonly number[]): number {
  const centre = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1));
}

/** What a run of experiments with places beside the resonance showed. */
export interface LocatedResult {
  readonly coveragePct: number;
  /** Coverage where the solver takes the same lengths for the resonances themselves. */
  readonly coverageWithoutPct: number;
  /** Mean half width of the intervals over that of intervals from the reading alone. */
  readonly intervalRatio: number;
  readonly meanIntervalMps: number;
  readonly ordersWrong: number;
  readonly marks: number;
  readonly falseOutliersPct: number;
}

/** Solves `count` experiments whose lengths were read at the loudest place, or where the bench shows the centre. */
export function benchLocated(count: number, seed: number, locating: Locating): LocatedResult {
  const random = randomFrom(seed);
  let [covered, coveredWithout, interval, plainInterval, wrong, blamed, marks] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < count; i += 1) {
    const experiment = makeLocated(random, locating);
    const solution = solveOrFail(experiment.marks);
    const plain = solveOrFail(
      experiment.marks.map((mark) => ({
        ...mark,
        locatedBy: 'centre',
        centreStandardUncertaintyHalfWidths: 0,
      })),
    );
    const isCovered = ({ speedMps, expandedUncertaintyMps }: Solution): boolean =>
      Math.abs(speedMps - experiment.trueSpeedMps) <= expandedUncertaintyMps;
    if (isCovered(solution)) covered += 1;
    if (isCovered(plain)) coveredWithout += 1;
    interval += solution.expandedUncertaintyMps;
    plainInterval += plain.expandedUncertaintyMps;
    for (const [j, mark] of solution.marks.entries()) {
      marks += 1;
      if (mark.outlier) blamed += 1;
      if (mark.order !== experiment.trueOrders[j]) wrong += 1;
    }
  }
  return {
    coveragePct: (100 * covered) / count,
    coverageWithoutPct: (100 * coveredWithout) / count,
    intervalRatio: interval / plainInterval,
    meanIntervalMps: interval / count,
    ordersWrong: wrong,
    marks,
    falseOutliersPct: (100 * blamed) / marks,
  };
}
