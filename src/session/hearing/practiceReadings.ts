import type { Experiment, Place } from '../../notebook/experiment.ts';
import { newPlace } from '../../notebook/newExperiment.ts';

/** What the instruments on the practice bench read. */
export interface PracticeReadings {
  readonly diameterM: number;
  readonly temperatureC: number;
  readonly humidityPct: number | null;
  readonly pressurePa: number | null;
}

/** Name of the place that practice gets where the present one is another room. */
export const PRACTICE_PLACE = 'Practice column';

/** Whether a mark was heard on a real column. */
function isReal({ evidence }: Experiment['marks'][number]): boolean {
  return evidence !== null && evidence.source !== 'practice';
}

/** Whether this experiment is of a real column: what practice reads isn't its apparatus. */
export function isOfRealColumn(experiment: Experiment): boolean {
  return experiment.marks.some(isReal);
}

/** Whether the place at which is measured now has the practice bench's air, and the tube is known or a real one. */
export function areReadingsNoted(experiment: Experiment, readings: PracticeReadings): boolean {
  const place = presentPlace(experiment);
  return (
    place?.temperatureC === readings.temperatureC &&
    (experiment.tube.diameterM !== null || isOfRealColumn(experiment))
  );
}

/** Whether noting the readings leads to a place of practice's own: the present one has other air, or real marks. */
export function needsOwnPlace(experiment: Experiment, readings: PracticeReadings): boolean {
  const place = presentPlace(experiment);
  if (place === undefined || place.temperatureC === readings.temperatureC) return false;
  if (place.temperatureC !== null) return true;
  return experiment.marks.some((mark) => mark.placeId === place.id && isReal(mark));
}

/**
 * The experiment with what the practice instruments read. Only what is empty is filled in: air that was noted, and what
 * real marks were made in, stays, and practice gets a place of its own, which is then measured at.
 * @param newId  of that place
 */
export function noteReadings(experiment: Experiment, readings: PracticeReadings, newId: string): Experiment {
  const { tube, present } = experiment;
  const diameterM = tube.diameterM ?? (isOfRealColumn(experiment) ? null : readings.diameterM);
  const noted = { ...experiment, tube: { ...tube, diameterM } };
  if (!needsOwnPlace(experiment, readings)) {
    const places = experiment.places.map((place) =>
      place.id === present.placeId ? withAir(place, readings) : place,
    );
    return { ...noted, places };
  }
  const there = experiment.places.find(
    ({ name, temperatureC }) => name === PRACTICE_PLACE && temperatureC === readings.temperatureC,
  );
  if (there !== undefined) return { ...noted, present: { ...present, placeId: there.id } };
  const own = withAir(newPlace(newId, PRACTICE_PLACE), readings);
  return { ...noted, places: [...experiment.places, own], present: { ...present, placeId: own.id } };
}

function presentPlace({ places, present }: Experiment): Place | undefined {
  return places.find((place) => place.id === present.placeId);
}

function withAir(place: Place, { temperatureC, humidityPct, pressurePa }: PracticeReadings): Place {
  return {
    ...place,
    temperatureC: place.temperatureC ?? temperatureC,
    humidityPct: place.humidityPct ?? humidityPct,
    pressurePa: place.pressurePa ?? pressurePa,
  };
}
