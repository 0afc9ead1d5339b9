import { columnM } from '../marks/columnOfMark.ts';
import { airFromReadings } from '../air/airState.ts';
import type { AirState } from '../air/airState.ts';
import { MarkIndex } from '../marks/markIndex.ts';
import type { Experiment, Place } from '../notebook/experiment.ts';
import { forkInUse, placeLabels } from '../report/marksCsv.ts';
import type { MeasuredMark } from '../report/marksCsv.ts';
import type { SolverMark } from '../solver/solution.ts';

/** The solver's messages name a mark by its number, as the page does. */
export function nameOfMark(number: number): string {
  return `Mark ${number}`;
}

/**
 * Marks as the solver takes them, named by their numbers: the zero offset off, the fork's pitch as measured or stamped,
 * the place's air. Marks of one place share its air as one object.
 * @throws RangeError if a mark's fork or place is not in the experiment
 */
export function solverMarks(experiment: Experiment, marks: readonly MeasuredMark[]): SolverMark[] {
  const { rule, tube } = experiment;
  const forks = new Map(experiment.forks.map((fork) => [fork.id, forkInUse(fork)]));
  const airs = new Map(experiment.places.map((place) => [place.id, airOf(place)]));
  const labels = placeLabels(experiment);
  const index = new MarkIndex(experiment.marks);
  return marks.map((mark) => {
    const pitch = forks.get(mark.forkId);
    const air = airs.get(mark.placeId);
    if (pitch === undefined || air === undefined) {
      throw new RangeError(`mark ${mark.id} must have its fork and place in the experiment`);
    }
    return {
      key: nameOfMark(index.numberOf(mark.id)),
      forkKey: mark.forkId,
      frequencyHz: pitch.hz,
      frequencyStandardUncertaintyHz: pitch.standardUncertaintyHz,
      ends: mark.ends,
      lengthM: columnM(mark.lengthM, rule.zeroOffsetM),
      otherLengthM: mark.otherLengthM === null ? null : columnM(mark.otherLengthM, rule.zeroOffsetM),
      lengthStandardUncertaintyM: rule.readingStandardUncertaintyM,
      radiusM: tube.diameterM === null ? null : tube.diameterM / 2,
      otherRadiusM: null,
      air,
      place: labels.get(mark.placeId) ?? '',
      order: mark.order,
    };
  });
}

function airOf(place: Place): AirState | null {
  const { temperatureC, temperatureStandardUncertaintyC, humidityPct, pressurePa } = place;
  if (temperatureC === null) return null;
  return airFromReadings({ temperatureC, temperatureStandardUncertaintyC, humidityPct, pressurePa });
}
