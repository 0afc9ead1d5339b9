import type { Mark } from '../../src/marks/mark.ts';
import type { Experiment } from '../../src/notebook/experiment.ts';
import { newExperiment, newFork, newPlace } from '../../src/notebook/newExperiment.ts';
import { normalFrom, randomFrom } from '../bench/solverExperiments.ts';

const PITCHES_HZ = [512, 480, 426.6, 384, 341.3, 320, 288, 256] as const;
const TRAVEL_M = 1.2;
/** Of the tube made up here, one end. */
const END_M = 0.0105;

/** How large, and which numbers are drawn. */
export interface LargeMaking {
  readonly marks: number;
  readonly places: number;
  readonly forks: number;
  readonly seed: number;
  /** Part of the marks with a length that is off by centimetres. */
  readonly blunders?: number;
  /** Part of the marks that are repeats of the one before, without a length. */
  readonly repeats?: number;
}

/** An experiment of any size with everything that a person could have done in it; the same for the same numbers. */
export function largeExperiment(making: LargeMaking): Experiment {
  const { marks: count, places: placeCount, forks: forkCount, seed, blunders = 0, repeats = 0 } = making;
  const random = randomFrom(seed);
  const fresh = newExperiment(`large-${seed}`, '2030-03-01T10:00:00.000Z');
  const forks = Array.from({ length: forkCount }, (_, i) =>
    newFork(`fork-${i + 1}`, PITCHES_HZ[i % PITCHES_HZ.length] ?? 512),
  );
  const places = Array.from({ length: placeCount }, (_, i) => ({
    ...newPlace(`place-${i + 1}`, `Room ${i + 1}`),
    temperatureC: 15 + (i % 15),
  }));
  const marks: Mark[] = [];
  for (let i = 0; marks.length < count; i += 1) {
    const place = places[i % placeCount];
    const fork = forks[Math.floor(i / placeCount) % forkCount];
    if (place === undefined || fork === undefined) throw new RangeError('There must be a place and a fork.');
    // Three resonances are passed in turn, as far as the tube reaches.
    const speedMps = 331.3 + 0.606 * place.temperatureC;
    const halfM = speedMps / (2 * fork.nominalHz);
    const highest = Math.max(1, Math.floor((TRAVEL_M + END_M) / halfM + 0.5));
    const order = 1 + (Math.floor(i / (placeCount * forkCount)) % Math.min(3, highest));
    const offM = random() < blunders ? 0.05 : 0;
    const lengthM = (order - 0.5) * halfM - END_M + offM + 0.0007 * normalFrom(random);
    const isRepeat = marks.length > 0 && random() < repeats;
    marks.push({
      id: `mark-${marks.length + 1}`,
      createdAt: new Date(Date.UTC(2030, 2, 1, 10, 0, marks.length)).toISOString(),
      forkId: fork.id,
      placeId: place.id,
      ends: 'closed',
      lengthM: isRepeat ? null : lengthM,
      otherLengthM: null,
      evidence: null,
      order: null,
      excluded: false,
      note: '',
      ...(isRepeat ? { repeatOf: marks.at(-1)?.id ?? null } : {}),
    });
  }
  return {
    ...fresh,
    forks,
    places,
    tube: { diameterM: 0.035, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: TRAVEL_M },
    present: { forkId: 'fork-1', placeId: 'place-1', ends: 'closed' },
    marks,
  };
}
