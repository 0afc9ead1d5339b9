import type { AirReadings } from '../../air/airState.ts';
import { LIMITS } from '../../limits/limits.ts';
import { requireInRange } from '../../numeric/requireInRange.ts';
import type { Complex } from '../../numeric/complex.ts';
import { checkSweepPlan, sweepDurationS, sweepPitchHz } from '../sweepPlan.ts';
import type { SweepPlan } from '../sweepPlan.ts';
import { ColumnModel } from './columnModel.ts';
import { ColumnRing } from './columnRing.ts';
import { mouthPhasor } from './microphonePhasor.ts';
import { SeededRandom } from './seededRandom.ts';

export interface PracticeSweepSettings extends SweepPlan {
  readonly sampleRateHz: number;
  readonly lengthM: number;
  readonly radiusM: number;
  readonly ends: 'closed' | 'open';
  readonly air: AirReadings;
}

/** Frames in which the pitch, and with it the column's impedance, is taken as steady; and steps of the air in them. */
const STEP = 512;
const AIR_STEPS = 10;
/** Amplitude of the loudspeaker alone at the microphone, and of the quiet room's noise. Judgements. */
const TONE_AMPLITUDE = 0.02;
const ROOM_RMS = 0.0005;

/** A slowly swept tone at the mouth of a simulated column of fixed length, as the microphone hears it. */
export class PracticeSweep {
  private phaseRad = 0;
  private frames = 0;
  /** Where the phasor at the microphone goes within this step. */
  private from: Complex = { re: 0, im: 0 };
  private to: Complex = { re: 0, im: 0 };
  private readonly ring = new ColumnRing();
  private readonly random: SeededRandom;

  /** @throws RangeError naming the argument, its range and the value */
  constructor(
    private readonly settings: PracticeSweepSettings,
    seed: number,
  ) {
    requireInRange('lengthM', settings.lengthM, LIMITS.lengthM.lowest, LIMITS.lengthM.highest);
    checkSweepPlan(settings);
    // The highest pitch is the hardest: where theory ends, it ends before the first sample.
    this.modelAt(settings.toHz);
    this.random = new SeededRandom(seed);
  }

  get sampleRateHz(): number {
    return this.settings.sampleRateHz;
  }

  /** The next stretch of sound. @param frames  >= 0 @returns mono, -1..1 */
  render(frames: number): Float32Array {
    const { sampleRateHz } = this.settings;
    const samples = new Float32Array(frames);
    for (let i = 0; i < frames; i += 1) {
      const hz = sweepPitchHz(this.settings, this.frames / sampleRateHz);
      const step = this.frames % STEP;
      if (step === 0) this.answer(hz);
      const re = this.from.re + (step / STEP) * (this.to.re - this.from.re);
      const im = this.from.im + (step / STEP) * (this.to.im - this.from.im);
      this.phaseRad = (this.phaseRad + (2 * Math.PI * hz) / sampleRateHz) % (2 * Math.PI);
      const tone = re * Math.cos(this.phaseRad) - im * Math.sin(this.phaseRad);
      samples[i] = TONE_AMPLITUDE * tone + ROOM_RMS * this.random.normal();
      this.frames += 1;
    }
    return samples;
  }

  private modelAt(frequencyHz: number): ColumnModel {
    const { radiusM, ends, air } = this.settings;
    return new ColumnModel({ frequencyHz, radiusM, ends, air });
  }

  /** Direct sound and mouth together, over the direct sound, in the frame that turns with the tone. */
  private answer(frequencyHz: number): void {
    const { lengthM, sampleRateHz } = this.settings;
    this.from = this.to;
    const drive = this.frames / sampleRateHz < sweepDurationS(this.settings) ? 1 : 0;
    const model = this.modelAt(frequencyHz);
    for (let i = 0; i < AIR_STEPS; i += 1) {
      this.ring.step(model, lengthM, { re: drive, im: 0 }, STEP / AIR_STEPS / sampleRateHz);
    }
    const mouth = mouthPhasor(this.ring.motion);
    this.to = { re: drive + mouth.re, im: mouth.im };
  }
}
