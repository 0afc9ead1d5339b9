import type { KnownTube } from '../../resonance/following/columnGuess.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';

/**
 * What decides the widths of a column's resonances.
 * @param of  fork, place and ends, as of a mark; those that are in use where it isn't given
 * @returns null where the tube's diameter isn't known
 */
export function knownTube(
  { present, forks, places, tube }: Experiment,
  of: Experiment['present'] = present,
): KnownTube | null {
  const fork = forks.find(({ id }) => id === of.forkId);
  const place = places.find(({ id }) => id === of.placeId);
  if (tube.diameterM === null || fork === undefined) return null;
  const temperatureC = place?.temperatureC ?? null;
  return {
    frequencyHz: forkInUse(fork).hz,
    ends: of.ends,
    diameterM: tube.diameterM,
    ...(temperatureC === null ? {} : { temperatureC }),
  };
}
