import type { Experiment } from '../notebook/experiment.ts';
import { measuredMarks } from '../report/marksCsv.ts';
import { compare } from '../solver/compare.ts';
import type { ComparedGroup, Comparison, NoComparison } from '../solver/compare.ts';
import { solverMark } from './benchSolve.ts';

/** What may be set against each other. */
export type CompareBy = 'place' | 'fork' | 'ends';

/** The experiment's marks that count, in groups that have at least one; their keys are the place's id, the fork's, or the ends. */
export function comparedGroups(experiment: Experiment, by: CompareBy): readonly ComparedGroup[] {
  const groups = new Map<string, ComparedGroup & { marks: ReturnType<typeof solverMark>[] }>();
  for (const mark of measuredMarks(experiment)) {
    if (mark.excluded) continue;
    const key = by === 'place' ? mark.placeId : by === 'fork' ? mark.forkId : mark.ends;
    const group = groups.get(key) ?? { key, marks: [] };
    group.marks.push(solverMark(experiment, mark));
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** Every pair of groups, compared with the errors that they have in common. */
export function comparePairs(groups: readonly ComparedGroup[]): readonly (Comparison | NoComparison)[] {
  return groups.flatMap((one, index) => groups.slice(index + 1).map((other) => compare(one, other)));
}
