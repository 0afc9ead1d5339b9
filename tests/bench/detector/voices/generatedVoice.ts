import { unitRms } from '../noises.ts';
import type { Random } from '../random.ts';
import { pause, phrase, type Gesture } from './phrases.ts';
import { NoiseBand, TractResonance } from './resonators.ts';

type Five<T> = readonly [T, T, T, T, T];

/** How fast voice, hiss, tongue and pitch follow their goals, s. */
const VOICE_S = 0.012;
const HISS_S = 0.008;
const TONGUE_S = 0.04;
const PITCH_S = 0.08;
/** Controls are moved this often, Hz. */
const CONTROL_HZ = 1000;

/** Shares of the glottis' period in which it opens and closes. @see Rosenberg 1971, J. Acoust. Soc. Am. 49, 583 */
const OPENING = 0.4;
const CLOSING = 0.16;
/** Bandwidths of the resonances, and where the two above the vowels' own stay, Hz. Common practice, no source. */
const BANDWIDTHS_HZ = [90, 130, 170, 250, 350] as const;
const UPPER_HZ = [3500, 4500] as const;

/** Fitted to the long-term spectrum of Byrne et al. 1994, which the voice's test holds. */
const BREATH = 0.2;
const HISS = 2.2;
const LOW_SHELF = { cornerHz: 200, gain: 1 } as const;
const HIGH_SHELF = { cornerHz: 2500, gain: 3 } as const;

/**
 * One person talking, without a file or a program from outside: pulses of a glottis through moving resonances, the
 * hisses and bursts of consonants up to the top of the band, in syllables, phrases and pauses. It says nothing.
 * @returns samples of unit rms; the same random stream gives the same voice
 */
export function generatedVoice(random: Random, length: number, sampleRateHz: number): Float32Array {
  const mouth = new Mouth(random, sampleRateHz);
  const result = new Float32Array(length);
  const step = Math.round(sampleRateHz / CONTROL_HZ);
  const stepS = step / sampleRateHz;
  // Not everybody begins at once.
  let queue = [pause(random, random.uniform(0, 2))];
  let leftS = 0;
  for (let at = 0; at < length; at += step) {
    while (leftS <= 0) {
      const next = queue.shift();
      if (next === undefined) queue = phrase(random);
      else {
        leftS += next.durationS;
        mouth.goal = next;
      }
    }
    leftS -= stepS;
    mouth.move(stepS);
    mouth.sound(result.subarray(at, at + step));
  }
  return unitRms(result);
}

/** Glottis, tract and lips of one person. */
class Mouth {
  goal: Gesture;
  private readonly meanPitchHz: number;
  /** Resonances against those of a man's tract. */
  private readonly tract: number;
  private voice = 0;
  private hiss = 0;
  private pitch = 1;
  private phase: number;
  private readonly formantsHz: number[] = [500, 1500, 2500, ...UPPER_HZ];
  private readonly resonances: readonly TractResonance[];
  private readonly band: NoiseBand;
  private low = 0;
  private belowHigh = 0;
  private readonly lowStep: number;
  private readonly highStep: number;
  /** White noise of the same density at any rate. */
  private readonly noiseGain: number;

  constructor(
    private readonly random: Random,
    private readonly sampleRateHz: number,
  ) {
    // Men from 95 Hz on, women about 200, children to 285; a higher voice has a shorter tract.
    this.meanPitchHz = 95 * 3 ** random.next();
    this.tract = 1 + 0.28 * Math.max(0, Math.log(this.meanPitchHz / 110)) + random.uniform(-0.05, 0.05);
    this.phase = random.next();
    this.goal = pause(random, 0);
    this.resonances = BANDWIDTHS_HZ.map((widthHz) => new TractResonance(sampleRateHz, widthHz));
    this.band = new NoiseBand(sampleRateHz);
    this.lowStep = 1 - Math.exp((-2 * Math.PI * LOW_SHELF.cornerHz) / sampleRateHz);
    this.highStep = 1 - Math.exp((-2 * Math.PI * HIGH_SHELF.cornerHz) / sampleRateHz);
    this.noiseGain = Math.sqrt((12 * sampleRateHz) / 48_000);
  }

  /** Moves all parts towards the goal. */
  move(stepS: number): void {
    const { goal } = this;
    const near = (timeS: number): number => 1 - Math.exp(-stepS / timeS);
    this.voice += near(VOICE_S) * (goal.voice - this.voice);
    this.hiss += near(HISS_S) * (goal.hiss - this.hiss);
    this.pitch += near(PITCH_S) * (goal.pitch - this.pitch);
    this.resonances.forEach((resonance, i) => {
      const hz = this.formantsHz[i];
      this.formantsHz[i] = hz + near(TONGUE_S) * ((goal.formantsHz[i] ?? hz) - hz);
      resonance.tune(this.formantsHz[i] * this.tract);
    });
    this.band.tune(goal.hissHz);
  }

  /** Fills the samples. */
  sound(samples: Float32Array): void {
    const { random, voice, band, noiseGain, lowStep, highStep } = this;
    const [first, second, third, fourth, fifth] = this.resonances as Five<TractResonance>;
    const phaseStep = (this.meanPitchHz * this.pitch) / this.sampleRateHz;
    const hiss = HISS * this.hiss;
    for (let i = 0; i < samples.length; i += 1) {
      this.phase += phaseStep;
      if (this.phase >= 1) this.phase -= 1;
      const noise = noiseGain * (random.next() - 0.5);
      const driven = voice * (glottalPulse(this.phase) + BREATH * noise);
      const voiced = fifth.next(fourth.next(third.next(second.next(first.next(driven)))));
      const value = voiced + band.next(hiss * noise);
      this.low += lowStep * (value - this.low);
      this.belowHigh += highStep * (value - this.belowHigh);
      samples[i] = value + LOW_SHELF.gain * this.low + HIGH_SHELF.gain * (value - this.belowHigh);
    }
  }
}

/** Slope of the air flow through the glottis over one period: what radiates. */
function glottalPulse(phase: number): number {
  if (phase < OPENING) return (0.5 * Math.PI * Math.sin((Math.PI * phase) / OPENING)) / OPENING;
  if (phase >= OPENING + CLOSING) return 0;
  return (-Math.PI * Math.sin((Math.PI * (phase - OPENING)) / (2 * CLOSING))) / (2 * CLOSING);
}
