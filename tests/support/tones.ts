import { Random } from '../bench/detector/random.ts';

/** A steady or dying tone in white noise. */
export interface ToneInNoise {
  readonly sampleRateHz: number;
  readonly durationS: number;
  readonly frequencyHz: number;
  /** Peak amplitude at time 0. */
  readonly amplitude: number;
  /** Standard deviation of the noise. */
  readonly noiseRms: number;
  /** Time in which the amplitude falls to 1/e; none: it stays. */
  readonly decayTimeS?: number;
  readonly phaseRad?: number;
}

/** Samples of a tone in Gaussian noise; the same seed gives the same noise. */
export function toneInNoise(what: ToneInNoise, seed: number): Float32Array {
  const random = new Random(seed);
  const samples = new Float32Array(Math.round(what.durationS * what.sampleRateHz));
  for (let i = 0; i < samples.length; i += 1) {
    const t = i / what.sampleRateHz;
    const amplitude = what.amplitude * Math.exp(-t / (what.decayTimeS ?? Infinity));
    const tone = amplitude * Math.cos(2 * Math.PI * what.frequencyHz * t + (what.phaseRad ?? 0));
    samples[i] = tone + (what.noiseRms > 0 ? what.noiseRms * random.gauss() : 0);
  }
  return samples;
}

/** One strike of a fork: when, how loud, how fast it dies, and when a hand damps it. */
export interface StruckTone {
  readonly strikeS: number;
  readonly amplitude: number;
  readonly decayTimeS: number;
  readonly dampedS?: number;
}

/** Adds struck tones to samples; each strike ends the sound of the one before. */
export function addStrikes(
  samples: Float32Array,
  sampleRateHz: number,
  frequencyHz: number,
  strikes: readonly StruckTone[],
): void {
  strikes.forEach((strike, i) => {
    const until = strikes[i + 1]?.strikeS ?? Infinity;
    for (let n = Math.ceil(strike.strikeS * sampleRateHz); n < samples.length; n += 1) {
      const t = n / sampleRateHz;
      if (t >= until) break;
      const since = t - strike.strikeS;
      let level = strike.amplitude * Math.min(1, since / 0.002) * Math.exp(-since / strike.decayTimeS);
      if (strike.dampedS !== undefined) level *= Math.max(0, Math.min(1, 1 - (t - strike.dampedS) / 0.045));
      samples[n] = samples[n] + level * Math.cos(2 * Math.PI * frequencyHz * t);
    }
  });
}
