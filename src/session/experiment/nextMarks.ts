import type { Experiment } from '../../notebook/experiment.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';
import { nextMarksAfter } from '../../solver/plan.ts';
import type { NextMark } from '../../solver/plan.ts';
import { countedGroups } from './countedGroups.ts';
import { SolvedGroups } from './solvedGroups.ts';

/**
 * Marks at the present place that would make its speed more certain, best first; empty before there is a speed.
 * @param known  what was solved before
 */
export function nextMarksHere(experiment: Experiment, known = new SolvedGroups()): readonly NextMark[] {
  const { present, forks, tube } = experiment;
  const marks = countedGroups(experiment, 'place').get(present.placeId);
  if (marks === undefined) return [];
  // What lies in a drawer can't be struck: a fork counts once something was measured with it, or is to be.
  const inUse = new Set([present.forkId, ...experiment.marks.map(({ forkId }) => forkId)]);
  const available = forks
    .filter(({ id }) => inUse.has(id))
    .map((fork) => {
      const { hz, standardUncertaintyHz } = forkInUse(fork);
      return {
        forkKey: fork.id,
        frequencyHz: hz,
        frequencyStandardUncertaintyHz: standardUncertaintyHz,
      };
    });
  const solved = known.solve('place', present.placeId, marks);
  return nextMarksAfter(solved, marks.at(-1), {
    forks: available,
    ends: [present.ends],
    travelM: tube.travelM,
  });
}
