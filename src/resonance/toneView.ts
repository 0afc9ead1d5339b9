import { fillPrefixSums } from '../numeric/prefixSum.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';

/**
 * A stretch of the narrow stream in the frame that turns with the fork, with the noise beside it: what the detectors
 * work on. Index k belongs to (firstIndex + k) / rateHz on the source's time axis. Arrays may be longer than `length`.
 */
export interface ToneView {
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly length: number;
  readonly firstIndex: number;
  /** Values a second, about 100. */
  readonly rateHz: number;
  /** Noise-equivalent bandwidth of one value, Hz. */
  readonly bandwidthHz: number;
  /** Noise density at each value from the near side bands, mean square per Hz. */
  readonly noiseDensity: Float64Array;
  /** Density at each value of the far side bands, 70–300 Hz away, mean square per Hz: where a voice's other harmonics lie. */
  readonly farDensity: Float64Array;
  /** Prefix sums, one longer than the values, see `rangeSum`. */
  readonly sums: {
    readonly re: Float64Array;
    readonly im: Float64Array;
    readonly noiseDensity: Float64Array;
    readonly farDensity: Float64Array;
  };
}

/** The side bands around a value are complete within this many further values. */
const LATE_FRAMES = 16;

/**
 * A view that moves along its series: what it shows changes with each `show`, in the same arrays. Neighbouring stretches
 * overlap, and what both have needn't be worked out again. It shows nothing until it is told what.
 */
export class MovingView implements ToneView {
  readonly #series: ToneSeries;
  #re = new Float64Array(0);
  #im = new Float64Array(0);
  #noiseDensity = new Float64Array(0);
  #farDensity = new Float64Array(0);
  #sums = emptySums(0);
  #length = 0;
  #firstIndex = 0;
  #offsetHz = NaN;

  constructor(series: ToneSeries) {
    this.#series = series;
  }

  get series(): ToneSeries {
    return this.#series;
  }

  get rateHz(): number {
    return this.#series.rateHz;
  }

  get bandwidthHz(): number {
    return this.#series.bandwidthHz;
  }

  get length(): number {
    return this.#length;
  }

  get firstIndex(): number {
    return this.#firstIndex;
  }

  get re(): Float64Array {
    return this.#re;
  }

  get im(): Float64Array {
    return this.#im;
  }

  get noiseDensity(): Float64Array {
    return this.#noiseDensity;
  }

  get farDensity(): Float64Array {
    return this.#farDensity;
  }

  get sums(): ToneView['sums'] {
    return this.#sums;
  }

  /**
   * Shows the values [from, to) of the series, turned back by the fork's offset from the frequency that was moved to 0 Hz.
   * @param offsetHz  the fork's frequency less that one
   */
  show(from: number, to: number, offsetHz: number): void {
    const length = to - from;
    const shift = from - this.#firstIndex;
    // What was there already stays, unless the frame turns at another speed now.
    const isAnew = shift < 0 || length > this.#re.length;
    const there = isAnew ? 0 : Math.max(0, Math.min(length, this.#length - shift));
    if (length > this.#re.length) this.#allocate(length);
    const kept = offsetHz === this.#offsetHz ? there : 0;
    if (shift > 0 && there > 0) {
      for (const values of [this.#re, this.#im, this.#noiseDensity, this.#farDensity]) {
        values.copyWithin(0, shift, this.#length);
      }
    }
    this.#firstIndex = from;
    this.#length = length;
    this.#offsetHz = offsetHz;
    this.#turn(kept);
    this.#readNoise(Math.max(0, there - LATE_FRAMES));
    this.#sum();
  }

  /** A view grows for a while before it moves: twice what is asked for, so that this happens a few times only. */
  #allocate(least: number): void {
    const length = 2 * least;
    this.#re = new Float64Array(length);
    this.#im = new Float64Array(length);
    this.#noiseDensity = new Float64Array(length);
    this.#farDensity = new Float64Array(length);
    this.#sums = emptySums(length);
  }

  #turn(from: number): void {
    const { re, im, rateHz } = this.#series;
    const turn = (-2 * Math.PI * this.#offsetHz) / rateHz;
    for (let i = from; i < this.#length; i += 1) {
      const k = this.#firstIndex + i;
      const cos = Math.cos(turn * k);
      const sin = Math.sin(turn * k);
      this.#re[i] = re[k] * cos - im[k] * sin;
      this.#im[i] = re[k] * sin + im[k] * cos;
    }
  }

  /** The newest values take the newest frame there is, until their own comes. */
  #readNoise(from: number): void {
    const { sideBands } = this.#series;
    for (let i = from; i < this.#length; i += 1) {
      const frame = sideBands.frameAt(this.#firstIndex + i);
      this.#noiseDensity[i] = frame < 0 ? 0 : sideBands.near[frame];
      this.#farDensity[i] = frame < 0 ? 0 : sideBands.far[frame];
    }
  }

  #sum(): void {
    const sums = this.#sums;
    fillPrefixSums(this.#re, sums.re, this.#length);
    fillPrefixSums(this.#im, sums.im, this.#length);
    fillPrefixSums(this.#noiseDensity, sums.noiseDensity, this.#length);
    fillPrefixSums(this.#farDensity, sums.farDensity, this.#length);
  }
}

/** Prefix sums of so many values. */
const emptySums = (length: number): ToneView['sums'] => ({
  re: new Float64Array(length + 1),
  im: new Float64Array(length + 1),
  noiseDensity: new Float64Array(length + 1),
  farDensity: new Float64Array(length + 1),
});

/**
 * The series from one index to another, turned back by the fork's offset.
 * The noise at each value is the near side bands', of the frame whose middle is closest.
 * @param offsetHz  the fork's frequency less the one that was moved to 0 Hz
 */
export function viewOf(series: ToneSeries, fromIndex: number, toIndex: number, offsetHz: number): ToneView {
  const view = new MovingView(series);
  view.show(fromIndex, toIndex, offsetHz);
  return view;
}
