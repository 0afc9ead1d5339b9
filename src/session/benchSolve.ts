import { ownMarks } from '../marks/markList.ts';
import type { Experiment } from '../notebook/experiment.ts';
import type { FullSolution } from '../solver/solve.ts';
import type { NoSolution, Solution } from '../solver/solution.ts';
import type { BenchOutcome } from './benchOutcome.ts';
import { countedGroups } from './countedGroups.ts';
import { SolvedGroups } from './solvedGroups.ts';
import { nameOfMark } from './solverMarks.ts';

/**
 * Solves each place that has marks with lengths, in the notebook's order of places.
 * @param known  what was solved before: places whose marks are the same are not solved again
 */
export function solveExperiment(experiment: Experiment, known = new SolvedGroups()): BenchOutcome {
  const groups = countedGroups(experiment, 'place');
  known.keepOnly('place', groups);
  const ids = new Map(ownMarks(experiment.marks).map((mark, index) => [nameOfMark(index + 1), mark.id]));
  const places = experiment.places.flatMap(({ id }) => {
    const marks = groups.get(id);
    return marks === undefined
      ? []
      : [{ placeId: id, solution: withIds(ids, known.solve('place', id, marks)) }];
  });
  return { places };
}

/** The solver names a mark by its number; what it says of each goes by id. */
function withIds(ids: ReadonlyMap<string, string>, solved: FullSolution | NoSolution): Solution | NoSolution {
  if (!('fit' in solved)) return solved;
  const { solution } = solved;
  return {
    ...solution,
    marks: solution.marks.map((mark) => ({ ...mark, key: ids.get(mark.key) ?? mark.key })),
  };
}
