import type { Experiment } from '../../notebook/experiment.ts';
import { measuredMarks } from '../../notebook/measuredMarks.ts';
import type { SolverMark } from '../../solver/solution.ts';
import { solverMarks } from './solverMarks.ts';

/** By what marks are put together to be solved. */
export type GroupBy = 'place' | 'fork' | 'ends';

/**
 * The marks that count, as the solver takes them, in groups that have at least one: under the place's id, the fork's, or
 * the ends. In the order in which the groups' first marks were made.
 */
export function countedGroups(
  experiment: Experiment,
  by: GroupBy,
): ReadonlyMap<string, readonly SolverMark[]> {
  const counted = measuredMarks(experiment).filter((mark) => !mark.excluded);
  const taken = solverMarks(experiment, counted);
  const groups = new Map<string, SolverMark[]>();
  for (const [i, mark] of counted.entries()) {
    const id = by === 'place' ? mark.placeId : by === 'fork' ? mark.forkId : mark.ends;
    const one = taken[i];
    if (one === undefined) continue;
    const group = groups.get(id);
    if (group === undefined) groups.set(id, [one]);
    else group.push(one);
  }
  return groups;
}
