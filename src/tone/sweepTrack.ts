import FFT from 'fft.js';
import { isWithin } from '../limits/limits.ts';
import { SAMPLE_RATES_HZ } from './hearableFrequency.ts';

/** The strongest steady tone of one frame of a sweep. */
export interface SweepFrame {
  /** Middle of the frame. */
  readonly timeS: number;
  readonly frequencyHz: number;
  /** Mean square of the tone; a sine of amplitude 1 has ½. */
  readonly meanSquare: number;
  /** Mean square of the noise in as many bins as the tone was taken from. */
  readonly noiseMeanSquare: number;
}

/** A stretch of which nothing is known: lost sound, and where it may be none, a break in the capture. */
export interface SweepGap {
  readonly fromS: number;
  /** >= fromS. */
  readonly toS: number;
}

/** Long enough to part a tone from talk, short enough that a slow sweep stays within a bin: 0.17 s at 48 kHz. */
export const FRAME_S = 0.17;
/** Bins to each side that hold a Hann window's line (Harris 1978: the main lobe reaches 2 bins). */
const LOBE = 2;
/** Bins to each side that tell the noise. */
const SIDE_BINS = [6, 30] as const;

/** Follows a slowly swept tone through sound: one frame each 0.085 s, blocks of any size. */
export class SweepTrack {
  readonly frames: SweepFrame[] = [];
  /** In order. */
  readonly gaps: SweepGap[] = [];
  private readonly sampleRateHz: number;
  private readonly lowestHz: number;
  private readonly highestHz: number;
  private readonly size: number;
  private readonly fft: FFT;
  private readonly window: Float64Array;
  private readonly buffer: Float64Array;
  private readonly windowed: Float64Array;
  private readonly spectrum: Float64Array;
  private readonly windowPower: number;
  private filled = 0;
  private taken = 0;

  /**
   * @param sampleRateHz  8000..384 000
   * @param lowestHz  of the sweep, > 0; below it nothing is looked for
   * @param highestHz  above it nothing is looked for; below half the sample rate
   * @throws RangeError naming the argument, its range and the value
   */
  constructor(sampleRateHz: number, lowestHz: number, highestHz: number) {
    if (!isWithin(SAMPLE_RATES_HZ, sampleRateHz)) {
      const { lowest, highest } = SAMPLE_RATES_HZ;
      throw new RangeError(`sampleRateHz must be ${lowest}..${highest}, got ${sampleRateHz}`);
    }
    if (!(lowestHz > 0 && highestHz > lowestHz && highestHz < sampleRateHz / 2)) {
      throw new RangeError(
        `lowestHz..highestHz must rise within 0..${sampleRateHz / 2}, got ${lowestHz}..${highestHz}`,
      );
    }
    this.sampleRateHz = sampleRateHz;
    this.lowestHz = lowestHz;
    this.highestHz = highestHz;
    this.size = 2 ** Math.round(Math.log2(FRAME_S * sampleRateHz));
    this.fft = new FFT(this.size);
    this.window = Float64Array.from(
      { length: this.size },
      (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / this.size),
    );
    this.windowPower = this.window.reduce((sum, w) => sum + w * w, 0);
    this.buffer = new Float64Array(this.size);
    this.windowed = new Float64Array(this.size);
    this.spectrum = new Float64Array(2 * this.size);
  }

  /** @param samples  mono, -1..1 */
  push(samples: Float32Array): void {
    for (const sample of samples) {
      this.buffer[this.filled] = sample;
      this.filled += 1;
      if (this.filled < this.size) continue;
      this.addFrame();
      // Frames overlap by half.
      this.buffer.copyWithin(0, this.size / 2);
      this.filled = this.size / 2;
      this.taken += this.size / 2;
    }
  }

  /**
   * Notes that the sound broke off: no frame spans it, and time goes on as it did.
   * @param startFrame  of the next sample on the source's own count, lost frames included
   */
  interrupt(startFrame: number): void {
    this.gaps.push({
      fromS: (this.taken + this.filled) / this.sampleRateHz,
      toS: startFrame / this.sampleRateHz,
    });
    this.taken = startFrame;
    this.filled = 0;
  }

  private addFrame(): void {
    for (let i = 0; i < this.size; i += 1) {
      this.windowed[i] = this.buffer[i] * this.window[i];
    }
    this.fft.realTransform(this.spectrum, this.windowed);
    const binHz = this.sampleRateHz / this.size;
    const from = Math.max(LOBE, Math.floor(this.lowestHz / binHz) - 1);
    const to = Math.min(this.size / 2 - LOBE - 1, Math.ceil(this.highestHz / binHz) + 1);
    let peak = from;
    for (let bin = from; bin <= to; bin += 1) if (this.power(bin) > this.power(peak)) peak = bin;
    let [sum, moment] = [0, 0];
    for (let bin = peak - LOBE; bin <= peak + LOBE; bin += 1) {
      sum += this.power(bin);
      moment += this.power(bin) * bin;
    }
    if (!(sum > 0)) return;
    // Parseval over one side of the spectrum.
    const scale = 2 / (this.size * this.windowPower);
    this.frames.push({
      timeS: (this.taken + this.size / 2) / this.sampleRateHz,
      frequencyHz: (moment / sum) * binHz,
      meanSquare: sum * scale,
      noiseMeanSquare: (2 * LOBE + 1) * this.noisePower(peak) * scale,
    });
  }

  private power(bin: number): number {
    return this.spectrum[2 * bin] ** 2 + this.spectrum[2 * bin + 1] ** 2;
  }

  /** Mean noise of one bin beside the peak, from the median: a chi-square with two degrees has its median at ln 2. */
  private noisePower(peak: number): number {
    const [near, far] = SIDE_BINS;
    const powers: number[] = [];
    for (let away = near; away <= far; away += 1) {
      for (const bin of [peak - away, peak + away]) {
        if (bin > 0 && bin < this.size / 2) powers.push(this.power(bin));
      }
    }
    powers.sort((a, b) => a - b);
    return powers[powers.length >> 1] / Math.LN2;
  }
}
