import { airFromReadings } from '../../air/airState.ts';
import { speedOfSound } from '../../air/speedOfSound.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { measuredMarks } from '../../notebook/measuredMarks.ts';
import { airTemperature } from '../../solver/airTemperature.ts';
import type { AirTemperature } from '../../solver/airTemperature.ts';
import { matchGases } from '../../solver/otherGas.ts';
import type { GasMatch } from '../../solver/otherGas.ts';
import { unknownFork } from '../../solver/unknownFork.ts';
import type { UnknownFork } from '../../solver/unknownFork.ts';
import type { Solution } from '../../solver/solution.ts';
import type { Outcome } from './outcome.ts';
import { solverMarks } from './solverMarks.ts';

/**
 * Frequency of the present fork from its lengths and theory's speed at the place's temperature. Its stamp only says
 * which orders are meant.
 * @returns null where the temperature isn't noted or the fork has no marks
 */
export function frequencyFromSpeed(experiment: Experiment): UnknownFork | null {
  const { present } = experiment;
  const place = experiment.places.find((candidate) => candidate.id === present.placeId);
  const fork = experiment.forks.find((candidate) => candidate.id === present.forkId);
  if (place === undefined || place.temperatureC === null || fork === undefined) return null;
  const marks = measuredMarks(experiment).filter(
    (mark) => !mark.excluded && mark.placeId === present.placeId && mark.forkId === present.forkId,
  );
  if (marks.length === 0) return null;
  const theory = speedOfSound(airFromReadings({ ...place, temperatureC: place.temperatureC }));
  return unknownFork(solverMarks(experiment, marks), theory, fork.nominalHz);
}

/** Temperature at which the air has the measured speed; null where there is none or no such air. */
export function temperatureFromSpeed(experiment: Experiment, outcome: Outcome): AirTemperature | null {
  const solution = presentSolution(experiment, outcome);
  const place = experiment.places.find((candidate) => candidate.id === experiment.present.placeId);
  if (solution === null || place === undefined) return null;
  return airTemperature(solution, place.humidityPct, place.pressurePa);
}

/** Gases by how well they agree with the measured speed, best first; empty without a speed or a temperature. */
export function gasFromSpeed(experiment: Experiment, outcome: Outcome): readonly GasMatch[] {
  const solution = presentSolution(experiment, outcome);
  const place = experiment.places.find((candidate) => candidate.id === experiment.present.placeId);
  if (solution === null || place === undefined || place.temperatureC === null) return [];
  return matchGases(solution, place.temperatureC, place.temperatureStandardUncertaintyC);
}

/** The present place's solution; null before there is one. */
export function presentSolution(experiment: Experiment, outcome: Outcome): Solution | null {
  const found = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
  return found === undefined || found.speedMps === null ? null : found;
}
