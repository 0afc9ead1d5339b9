import { airFromReadings } from '../air/airState.ts';
import { columnM } from '../marks/columnOfMark.ts';
import { markNumber, ownMarks } from '../marks/markList.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { forkInUse, measuredMarks, placeLabel } from '../report/marksCsv.ts';
import type { MeasuredMark } from '../report/marksCsv.ts';
import { solve } from '../solver/solve.ts';
import type { NoSolution, Solution, SolverMark } from '../solver/solution.ts';
import type { BenchOutcome } from './benchOutcome.ts';

/** Solves each place that has marks with lengths, in the notebook's order of places. */
export function solveExperiment(experiment: Experiment): BenchOutcome {
  const marks = measuredMarks(experiment).filter((mark) => !mark.excluded);
  const places = experiment.places
    .map((place) => ({ placeId: place.id, marks: marks.filter((mark) => mark.placeId === place.id) }))
    .filter((place) => place.marks.length > 0)
    .map((place) => ({
      placeId: place.placeId,
      solution: withIds(experiment, solve(place.marks.map((mark) => solverMark(experiment, mark)))),
    }));
  return { places };
}

/** The solver's messages name a mark by its number, as the page does; its results go by id. */
function nameOf(number: number): string {
  return `Mark ${number}`;
}

function withIds(experiment: Experiment, solution: Solution | NoSolution): Solution | NoSolution {
  if (solution.speedMps === null) return solution;
  const ids = new Map(ownMarks(experiment.marks).map((mark, index) => [nameOf(index + 1), mark.id]));
  return {
    ...solution,
    marks: solution.marks.map((mark) => ({ ...mark, key: ids.get(mark.key) ?? mark.key })),
  };
}

/**
 * A mark as the solver takes it, named by its number: the zero offset off, the fork's pitch as measured or stamped, the place's air.
 * @throws RangeError if the mark's fork or place is not in the experiment
 */
export function solverMark(experiment: Experiment, mark: MeasuredMark): SolverMark {
  const { rule, tube } = experiment;
  const fork = experiment.forks.find((candidate) => candidate.id === mark.forkId);
  const place = experiment.places.find((candidate) => candidate.id === mark.placeId);
  if (fork === undefined || place === undefined) {
    throw new RangeError(`mark ${mark.id} must have its fork and place in the experiment`);
  }
  const pitch = forkInUse(fork);
  const { temperatureC } = place;
  return {
    key: nameOf(markNumber(experiment.marks, mark.id)),
    forkKey: fork.id,
    frequencyHz: pitch.hz,
    frequencyStandardUncertaintyHz: pitch.standardUncertaintyHz,
    ends: mark.ends,
    lengthM: columnM(mark.lengthM, rule.zeroOffsetM),
    otherLengthM: mark.otherLengthM === null ? null : columnM(mark.otherLengthM, rule.zeroOffsetM),
    lengthStandardUncertaintyM: rule.readingStandardUncertaintyM,
    radiusM: tube.diameterM === null ? null : tube.diameterM / 2,
    otherRadiusM: null,
    air:
      temperatureC === null
        ? null
        : airFromReadings({
            temperatureC,
            temperatureStandardUncertaintyC: place.temperatureStandardUncertaintyC,
            humidityPct: place.humidityPct,
            pressurePa: place.pressurePa,
          }),
    place: placeLabel(experiment, place.id),
    order: mark.order,
  };
}
