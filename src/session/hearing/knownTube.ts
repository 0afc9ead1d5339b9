import type { KnownTube } from '../../resonance/following/columnGuess.ts';
import type { Experiment } from '../../notebook/experiment.ts';

/** What decides the widths of the present column's resonances; null where its diameter isn't known. */
export function knownTube({ present, forks, places, tube }: Experiment): KnownTube | null {
  const fork = forks.find(({ id }) => id === present.forkId);
  const place = places.find(({ id }) => id === present.placeId);
  if (tube.diameterM === null || fork === undefined) return null;
  const air = place?.temperatureC ?? null;
  return {
    frequencyHz: fork.nominalHz,
    ends: present.ends,
    diameterM: tube.diameterM,
    ...(air === null ? {} : { temperatureC: air }),
  };
}
