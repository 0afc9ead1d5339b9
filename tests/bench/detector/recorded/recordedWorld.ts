import type { Company } from '../companySounds.ts';
import type { SoundsAlone } from '../soundAlone.ts';
import { recordAmid } from '../variedWorld.ts';
import type { Voices } from '../voices/voices.ts';
import type { WorldEntry } from '../worldSound.ts';

export const RECORDED_WORLD = 'recorded';

/**
 * Simulated forks and columns amid sounds that people recorded, and these sounds alone.
 * @param first  seed
 * @param each  recordings a kind of sound, and again as many without a fork
 */
export function recordedWorld(first: number, each: number, voices: Voices, company: Company): WorldEntry[] {
  const conditions = Object.keys(company).flatMap((name) => [name, `${name}-alone`]);
  return conditions.flatMap((condition) =>
    Array.from({ length: each }, (_, i) => {
      const seed = first + i;
      const make = () => recordAmid(RECORDED_WORLD, condition, seed, voices, company);
      return { world: RECORDED_WORLD, condition, seed, make };
    }),
  );
}

/** What people recorded, without a fork. @param voices  for no sound of these */
export const recordedAlone = (company: Company, voices: Voices): SoundsAlone => ({
  kinds: {
    music: ['guitar', 'instruments', 'music'],
    taps: ['taps'],
    water: ['water'],
    machine: ['machine'],
    animals: ['animals'],
    glass: ['glass'],
  },
  company,
  voices,
});
