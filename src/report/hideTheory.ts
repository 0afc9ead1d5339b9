import type { Experiment } from '../notebook/experiment.ts';
import type { Comparison } from '../solver/compare.ts';
import type { Solution, NoSolution, WorkingStep } from '../solver/solution.ts';
import type { ResultLines } from './resultLines.ts';

/** Warnings that give theory's speed away. */
const TELLING = ['differs-from-theory', 'speed-implausible', 'implausible'];

/** Whether this experiment's lesson keeps theory's speed back. */
export function hidesTheory(experiment: Experiment): boolean {
  return experiment.lesson?.hideTheory === true;
}

/** What may be said of a result where a lesson keeps theory back. */
export function factsWithoutTheory(lines: ResultLines): ResultLines['facts'] {
  return lines.facts.filter((fact) => !['Theory', 'Difference'].includes(fact.name));
}

/** The working without theory's speed and the difference from it. */
export function stepsWithoutTheory(steps: readonly WorkingStep[]): readonly WorkingStep[] {
  return steps.filter((step) => !/theory/i.test(step.title));
}

/** The warnings that don't give theory's speed away. */
export function warningsWithoutTheory(solution: Solution | NoSolution): readonly string[] {
  return solution.warnings.filter(({ code }) => !TELLING.includes(code)).map(({ message }) => message);
}

/** A comparison's sentence without what theory expects. */
export function statementWithoutTheory({ statement }: Comparison): string {
  return statement.replace(/ Theory expects .*$/s, '');
}
