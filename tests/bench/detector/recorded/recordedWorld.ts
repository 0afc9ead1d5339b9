import type { Company } from '../companySounds.ts';
import type { SoundsAlone } from '../soundAlone.ts';
import { recordingAmid } from '../variedWorld.ts';
import type { Voices } from '../voices/voices.ts';
import type { WorldEntry } from '../worldSound.ts';

/**
 * Simulated forks and columns amid sounds that people recorded, and these sounds alone, in unpractised hands.
 * @param first  seed
 * @param each  recordings a kind of sound, and again as many without a fork
 */
export const recordedWorld = (first: number, each: number, voices: Voices, company: Company): WorldEntry[] =>
  Object.keys(company)
    .flatMap((name) => [name, `${name}-alone`])
    .map((condition) => ({ world: 'recorded', condition, company, voices, hands: 'unpractised' }) as const)
    .flatMap((scene) => Array.from({ length: each }, (_, i) => recordingAmid(scene, first + i)));

/** The same beside a fork alone, in the own simulator's hands. */
export const practisedWorld = (first: number, each: number, voices: Voices, company: Company): WorldEntry[] =>
  Object.keys(company)
    .map((condition) => ({ world: 'practised', condition, company, voices, hands: 'practised' }) as const)
    .flatMap((scene) => Array.from({ length: each }, (_, i) => recordingAmid(scene, first + i)));

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
