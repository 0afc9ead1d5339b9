import type { Experiment } from '../notebook/experiment.ts';
import type { Comparison } from '../solver/compare.ts';
import type { NoSolution, Solution } from '../solver/solution.ts';
import type { SolverWarning, SolverWarningCode } from '../solver/solverWarning.ts';
import type { WorkingStep } from '../solver/workingStep.ts';
import type { ResultFact, ResultLines } from '../words/result.ts';

/** Warnings, facts and steps that give theory's speed away. */
const TELLING_WARNINGS: readonly SolverWarningCode[] = [
  'differs-from-theory',
  'speed-implausible',
  'implausible',
  // The air that a speed stands for is theory read backwards.
  'unusual-temperature',
  'no-temperature',
];
const TELLING_FACTS: readonly ResultFact['kind'][] = ['theory', 'difference'];
const TELLING_STEPS: readonly WorkingStep['kind'][] = ['theory', 'difference-from-theory'];

/** Whether this experiment's lesson keeps theory's speed back. */
export function hidesTheory(experiment: Experiment): boolean {
  return experiment.lesson?.hideTheory === true;
}

/** What may be said of a result where a lesson keeps theory back. */
export function factsWithoutTheory(lines: ResultLines): ResultLines['facts'] {
  return lines.facts.filter(({ kind }) => !TELLING_FACTS.includes(kind));
}

/** The working without theory's speed and the difference from it. */
export function stepsWithoutTheory(steps: readonly WorkingStep[]): readonly WorkingStep[] {
  return steps.filter(({ kind }) => !TELLING_STEPS.includes(kind));
}

/** Whether a warning doesn't give theory's speed away. */
export function keepsTheory({ code }: SolverWarning): boolean {
  return !TELLING_WARNINGS.includes(code);
}

/** The warnings that don't give theory's speed away. */
export function warningsWithoutTheory(solution: Solution | NoSolution): readonly SolverWarning[] {
  return solution.warnings.filter(keepsTheory);
}

/** A comparison without what theory expects. */
export function comparisonWithoutTheory(comparison: Comparison): Comparison {
  return { ...comparison, expected: null };
}
