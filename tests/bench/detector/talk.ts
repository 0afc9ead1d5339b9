import { mix, unitRms } from './noises.ts';
import type { Random } from './random.ts';
import { GENERATED_VOICES, type Voices } from './voices/voices.ts';

/**
 * Several people talking at once.
 * @param talkers  1, 2, 3…
 * @returns samples of unit rms
 */
export function talk(
  random: Random,
  length: number,
  sampleRateHz: number,
  talkers: number,
  voices: Voices = GENERATED_VOICES,
): Float32Array {
  const result = new Float32Array(length);
  for (let i = 0; i < talkers; i += 1) {
    const own = random.branch(`voice ${i}`);
    const said = voices.say(own, length, sampleRateHz);
    mix(result, said, own.uniform(0.4, 1));
  }
  return unitRms(result);
}
