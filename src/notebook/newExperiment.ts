import { THERMOMETER_STANDARD_UNCERTAINTY_C } from '../air/airState.ts';
import { stampStandardUncertaintyHz } from '../marks/usualUncertainties.ts';
import { SCHEMA_VERSION } from './experiment.ts';
import type { Experiment, Fork, Place } from './experiment.ts';

/** A fork as stamped, as uncertain as a stamp until it is measured. */
export function newFork(id: string, nominalHz: number): Fork {
  return {
    id,
    nominalHz,
    standardUncertaintyHz: stampStandardUncertaintyHz(nominalHz),
    measuredHz: null,
    measuredStandardUncertaintyHz: null,
  };
}

/** A place whose air hasn't been read yet. */
export function newPlace(id: string, name: string): Place {
  return {
    id,
    name,
    temperatureC: null,
    temperatureStandardUncertaintyC: THERMOMETER_STANDARD_UNCERTAINTY_C,
    humidityPct: null,
    pressurePa: null,
    filling: 'air',
    co2MoleFraction: null,
  };
}

/** An empty experiment: one 512 Hz fork, one place, a metre of travel, nothing said of the reading. */
export function newExperiment(id: string, createdAt: string): Experiment {
  const fork = newFork('fork-1', 512);
  const place = newPlace('place-1', 'Lab');
  return {
    schemaVersion: SCHEMA_VERSION,
    id,
    title: '',
    origin: { kind: 'experiment', number: 1, copy: 0 },
    createdAt,
    changedAt: createdAt,
    forks: [fork],
    places: [place],
    tube: { diameterM: null, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
    rule: { readingStandardUncertaintyM: null, zeroOffsetM: 0 },
    present: { forkId: fork.id, placeId: place.id, ends: 'closed' },
    marks: [],
    deletedMarks: [],
    note: '',
    group: '',
    className: '',
  };
}
