import { pooledMean } from '../../../src/solver/pooledMean.ts';
import { solve } from '../../../src/solver/solve.ts';
import type { SolverMark } from '../../../src/solver/solution.ts';
import { makeExperiment, normalFrom, randomFrom, USUAL_MAKING } from '../solverExperiments.ts';
import { growthExponent, timeSideBySide } from './sideBySide.ts';

const SEED = 20_260;
const MARKS = [8, 100, 1000] as const;
const GROUPS = [10, 100, 1000] as const;

export interface SolvingResult {
  readonly marks: readonly { readonly count: number; readonly ms: number }[];
  readonly marksExponent: number;
  readonly groups: readonly { readonly count: number; readonly ms: number }[];
  readonly groupsExponent: number;
}

/** Time of one solution and of one pooled class, by size. */
export function benchSolving(): SolvingResult {
  const random = randomFrom(SEED);
  const experiment = makeExperiment(random, { ...USUAL_MAKING, fewest: 8, most: 8 });
  const tables = MARKS.map((count) => repeated(experiment.marks, count, random));
  const classes = GROUPS.map((count) =>
    Array.from({ length: count }, (_, i) => ({
      name: `group ${i + 1}`,
      value: 344 + 1.5 * normalFrom(random),
      standardUncertainty: 0.5 + random(),
    })),
  );
  const marks = timeSideBySide(
    tables.map((table) => ({ name: '', run: () => void solve(table) })),
    5,
  );
  const groups = timeSideBySide(
    classes.map((groupResults) => ({ name: '', run: () => void pooledMean(groupResults) })),
    5,
  );
  return {
    marks: MARKS.map((count, i) => ({ count, ms: marks[i] ?? NaN })),
    marksExponent: growthExponent(MARKS, marks),
    groups: GROUPS.map((count, i) => ({ count, ms: groups[i] ?? NaN })),
    groupsExponent: growthExponent(GROUPS, groups),
  };
}

/** The experiment's marks read again and again, each time with a new reading error of 0.7 mm. */
const repeated = (marks: readonly SolverMark[], count: number, random: () => number): SolverMark[] =>
  Array.from({ length: count }, (_, i) => {
    const mark = marks[i % marks.length];
    return { ...mark, lengthM: mark.lengthM + (i < marks.length ? 0 : 0.0007 * normalFrom(random)) };
  });
