import { airFromReadings } from '../air/airState.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { forkInUse, measuredMarks } from '../report/marksCsv.ts';
import type { MeasuredMark } from '../report/marksCsv.ts';
import { solve } from '../solver/solve.ts';
import type { SolverMark } from '../solver/solution.ts';
import type { BenchOutcome } from './benchOutcome.ts';

/** Solves each place that has marks with lengths, in the notebook's order of places. */
export function solveExperiment(experiment: Experiment): BenchOutcome {
  const marks = measuredMarks(experiment).filter((mark) => !mark.excluded);
  const places = experiment.places
    .map((place) => ({ placeId: place.id, marks: marks.filter((mark) => mark.placeId === place.id) }))
    .filter((place) => place.marks.length > 0)
    .map((place) => ({
      placeId: place.placeId,
      solution: solve(place.marks.map((mark) => solverMark(experiment, mark))),
    }));
  return { places };
}

/**
 * A mark as the solver takes it, under its own id and its place's: the zero offset off, the fork's frequency as measured
 * or stamped, the place's air.
 * @throws RangeError if the mark's fork or place is not in the experiment
 */
export function solverMark(experiment: Experiment, mark: MeasuredMark): SolverMark {
  const { rule, tube } = experiment;
  const fork = experiment.forks.find((candidate) => candidate.id === mark.forkId);
  const place = experiment.places.find((candidate) => candidate.id === mark.placeId);
  if (fork === undefined || place === undefined) {
    throw new RangeError(`mark ${mark.id} must have its fork and place in the experiment`);
  }
  const { hz, standardUncertaintyHz } = forkInUse(fork);
  const { temperatureC } = place;
  return {
    key: mark.id,
    forkKey: fork.id,
    frequencyHz: hz,
    frequencyStandardUncertaintyHz: standardUncertaintyHz,
    ends: mark.ends,
    lengthM: mark.lengthM - rule.zeroOffsetM,
    otherLengthM: mark.otherLengthM === null ? null : mark.otherLengthM - rule.zeroOffsetM,
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
    place: place.id,
    order: mark.order,
  };
}
