import { SCHEMA_VERSION } from './experiment.ts';
import type { Experiment, Fork, Place } from './experiment.ts';

/** A fork as stamped, with a standard uncertainty of 0.1 % of its pitch until it is measured. */
export function newFork(id: string, nominalHz: number): Fork {
  return {
    id,
    nominalHz,
    standardUncertaintyHz: defaultForkStandardUncertaintyHz(nominalHz),
    measuredHz: null,
    measuredStandardUncertaintyHz: null,
  };
}

/** What is assumed of an unmeasured fork, Hz: 0.1 % of its pitch (common practice, no source). */
export function defaultForkStandardUncertaintyHz(nominalHz: number): number {
  return 0.001 * nominalHz;
}

/** A place whose air hasn't been read yet. */
export function newPlace(id: string, name: string): Place {
  return {
    id,
    name,
    temperatureC: null,
    temperatureStandardUncertaintyC: 0.5,
    humidityPct: null,
    pressurePa: null,
  };
}

/** An empty experiment: one 512 Hz fork, one place, a metre of travel, a rule read to a millimetre. */
export function newExperiment(id: string, createdAt: string): Experiment {
  const fork = newFork('fork-1', 512);
  const place = newPlace('place-1', 'Bench');
  return {
    schemaVersion: SCHEMA_VERSION,
    id,
    title: 'Experiment',
    createdAt,
    changedAt: createdAt,
    forks: [fork],
    places: [place],
    tube: { diameterM: null, travelM: 1 },
    rule: { readingStandardUncertaintyM: 0.001, zeroOffsetM: 0 },
    present: { forkId: fork.id, placeId: place.id, ends: 'closed' },
    marks: [],
    deletedMarks: [],
    note: '',
  };
}
