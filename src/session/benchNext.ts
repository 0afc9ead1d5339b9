import type { Experiment } from '../notebook/experiment.ts';
import { forkInUse, measuredMarks } from '../report/marksCsv.ts';
import { nextMarks } from '../solver/plan.ts';
import type { NextMark } from '../solver/plan.ts';
import { solverMark } from './benchSolve.ts';

/** Marks at the present place that would make its speed more certain, best first; empty before there is a speed. */
export function nextMarksHere(experiment: Experiment): readonly NextMark[] {
  const { present, forks, tube } = experiment;
  const marks = measuredMarks(experiment)
    .filter((mark) => !mark.excluded && mark.placeId === present.placeId)
    .map((mark) => solverMark(experiment, mark));
  const available = forks.map((fork) => {
    const { hz, standardUncertaintyHz } = forkInUse(fork);
    return {
      forkKey: fork.id,
      frequencyHz: hz,
      frequencyStandardUncertaintyHz: standardUncertaintyHz,
    };
  });
  return nextMarks(marks, { forks: available, ends: [present.ends], travelM: tube.travelM });
}
