import type { Experiment } from '../../notebook/experiment.ts';
import type { Outcome } from './outcome.ts';
import { countedGroups } from './countedGroups.ts';
import { SolvedGroups } from './solvedGroups.ts';

/**
 * Solves each place that has marks with lengths, in the notebook's order of places.
 * @param known  what was solved before: places whose marks are the same are not solved again
 */
export function solveExperiment(experiment: Experiment, known = new SolvedGroups()): Outcome {
  const groups = countedGroups(experiment, 'place');
  known.keepOnly('place', groups);
  const places = experiment.places.flatMap(({ id }) => {
    const marks = groups.get(id);
    if (marks === undefined) return [];
    const solved = known.solve('place', id, marks);
    return [{ placeId: id, solution: 'fit' in solved ? solved.solution : solved }];
  });
  return { places };
}
