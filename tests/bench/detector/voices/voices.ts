import type { Random } from '../random.ts';
import { generatedVoice } from './generatedVoice.ts';

export const VOICE_KINDS = ['generated', 'recorded', 'synthesised'] as const;

/** Generated here; recorded by people; synthesised by another program. The latter two only where they are installed. */
export type VoiceKind = (typeof VOICE_KINDS)[number];

/** People who can be made to talk. */
export interface Voices {
  readonly kind: VoiceKind;
  /**
   * One person talking for a while.
   * @returns samples of unit rms; the same random stream gives the same talk
   */
  say(random: Random, length: number, sampleRateHz: number): Float32Array;
}

/** The voices of all tests: nothing is needed for them but this code. */
export const GENERATED_VOICES: Voices = { kind: 'generated', say: generatedVoice };
