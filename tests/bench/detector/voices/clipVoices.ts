import { between } from '../interpolation.ts';
import { rootMeanSquare, unitRms } from '../noises.ts';
import type { Random } from '../random.ts';
import type { WavSound } from '../wav.ts';
import type { VoiceKind, Voices } from './voices.ts';

/** Talk out of clips that somebody or something else spoke, one after the other, at other speeds. */
export class ClipVoices implements Voices {
  /** @param clip  draws one; null: none of use */
  constructor(
    readonly kind: VoiceKind,
    private readonly clip: (random: Random) => WavSound | null,
  ) {}

  say(random: Random, length: number, sampleRateHz: number): Float32Array {
    const result = new Float32Array(length);
    // Playing faster or slower turns one voice into a child's or a man's.
    const speed = random.pick([0.62, 0.7, 0.85, 1, 1.15, 1.3, 1.4]) * random.uniform(0.97, 1.03);
    let at = Math.floor(random.uniform(-0.5, 1) * sampleRateHz);
    while (at < length) {
      const clip = this.clip(random);
      if (clip === null || clip.samples.length < 0.2 * clip.sampleRateHz) continue;
      const rms = rootMeanSquare(clip.samples);
      if (rms < 1e-3) continue;
      const step = (clip.sampleRateHz * speed) / sampleRateHz;
      const count = Math.floor((clip.samples.length - 4) / step);
      const gain = Math.exp(0.25 * random.gauss()) / rms;
      for (let i = Math.max(0, -at); i < count && at + i < length; i += 1) {
        result[at + i] += gain * between(clip.samples, 1 + i * step);
      }
      at += count + Math.floor(random.uniform(0.03, random.chance(0.2) ? 1.5 : 0.3) * sampleRateHz);
    }
    unitRms(result);
    if (this.kind === 'recorded' && random.chance(0.5)) raiseVoice(result, sampleRateHz);
    return result;
  }
}

/**
 * Recorded prompts are spoken softly: in 10 Hz at 512 Hz they hold 22.5 dB less than in all (measured), where the
 * long-term spectrum of Byrne et al. 1994 gives 18.5 dB. A raised voice is nearer to it: what lies above 350 Hz is
 * lifted. Unit rms, in place.
 */
function raiseVoice(samples: Float32Array, sampleRateHz: number): void {
  const step = 1 - Math.exp((-2 * Math.PI * 350) / sampleRateHz);
  let low = 0;
  for (let i = 0; i < samples.length; i += 1) {
    const value = samples[i];
    low += step * (value - low);
    samples[i] = value + 3 * (value - low);
  }
  unitRms(samples);
}
