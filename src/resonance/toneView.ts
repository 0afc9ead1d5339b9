import type { ToneSeries } from '../tone/toneSeries.ts';

/**
 * A stretch of the narrow stream in the frame that turns with the fork, with the noise beside it: what the detector
 * looks at. Index k belongs to (firstIndex + k) / rateHz on the source's time axis. Arrays may be longer than `length`.
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
  /** Noise density at each value from the flanks, mean square per Hz. */
  readonly noiseDensity: Float64Array;
  /** Density at each value of the far flanks, 70–300 Hz away, mean square per Hz: where a voice's other harmonics lie. */
  readonly farDensity: Float64Array;
  /** Running sums, one longer than the values: the sum over [a, b) is sum[b] − sum[a], however long the stretch. */
  readonly sums: {
    readonly re: Float64Array;
    readonly im: Float64Array;
    readonly noiseDensity: Float64Array;
    readonly farDensity: Float64Array;
  };
}

/** The flanks around a value are complete within this many further values. */
const LATE_FLANKS = 16;

/**
 * A view that can be moved along its series: the same arrays are filled anew, so a look leaves no litter. It shows
 * nothing until it is told what.
 */
export class MovingView implements ToneView {
  #series: ToneSeries;
  #re = new Float64Array(0);
  #im = new Float64Array(0);
  #noiseDensity = new Float64Array(0);
  #farDensity = new Float64Array(0);
  #sums = noSums();
  #length = 0;
  #firstIndex = 0;
  #offsetHz = NaN;

  constructor(series: ToneSeries) {
    this.#series = series;
  }

  /** Moves on to another series; shows nothing until it is told what. */
  moveTo(series: ToneSeries): void {
    this.#series = series;
    this.#length = 0;
    this.#firstIndex = 0;
    this.#offsetHz = NaN;
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
   * @param offsetHz  the fork's pitch less that frequency
   */
  show(from: number, to: number, offsetHz: number): void {
    const length = to - from;
    const shift = from - this.#firstIndex;
    // What was there already stays, unless the frame turns at another speed now.
    const isAnew = shift < 0 || length > this.#re.length;
    const there = isAnew ? 0 : Math.max(0, Math.min(length, this.#length - shift));
    if (length > this.#re.length) this.#makeRoom(length);
    const kept = offsetHz === this.#offsetHz ? there : 0;
    if (shift > 0 && there > 0) {
      this.#re.copyWithin(0, shift, this.#length);
      this.#im.copyWithin(0, shift, this.#length);
      this.#noiseDensity.copyWithin(0, shift, this.#length);
      this.#farDensity.copyWithin(0, shift, this.#length);
    }
    this.#firstIndex = from;
    this.#length = length;
    this.#offsetHz = offsetHz;
    this.#turn(kept);
    this.#flank(Math.max(0, there - LATE_FLANKS));
    this.#sum();
  }

  /** A view grows for a while before it moves: twice what is asked for, so that room is made a few times only. */
  #makeRoom(least: number): void {
    const length = 2 * least;
    this.#re = new Float64Array(length);
    this.#im = new Float64Array(length);
    this.#noiseDensity = new Float64Array(length);
    this.#farDensity = new Float64Array(length);
    this.#sums = noSums(length);
  }

  #turn(from: number): void {
    const series = this.#series;
    const turn = (-2 * Math.PI * this.#offsetHz) / series.rateHz;
    for (let i = from; i < this.#length; i += 1) {
      const k = this.#firstIndex + i;
      const cos = Math.cos(turn * k);
      const sin = Math.sin(turn * k);
      const x = series.re[k];
      const y = series.im[k];
      this.#re[i] = x * cos - y * sin;
      this.#im[i] = x * sin + y * cos;
    }
  }

  /** The newest values take the newest flanks there are, until their own come. */
  #flank(from: number): void {
    const { flanks } = this.#series;
    for (let i = from; i < this.#length; i += 1) {
      const frame = flanks.frameAt(this.#firstIndex + i);
      this.#noiseDensity[i] = frame < 0 ? 0 : flanks.near[frame];
      this.#farDensity[i] = frame < 0 ? 0 : flanks.far[frame];
    }
  }

  #sum(): void {
    const sums = this.#sums;
    addUp(this.#re, sums.re, this.#length);
    addUp(this.#im, sums.im, this.#length);
    addUp(this.#noiseDensity, sums.noiseDensity, this.#length);
    addUp(this.#farDensity, sums.farDensity, this.#length);
  }
}

let shared: MovingView | null = null;

/**
 * The one view that all looks at finished series share, so that looking back at one after the other takes no more room.
 * Good until it is asked for again.
 */
export function sharedView(series: ToneSeries): MovingView {
  shared ??= new MovingView(series);
  shared.moveTo(series);
  return shared;
}

/** Room for running sums of so many values. */
const noSums = (length = 0): ToneView['sums'] => ({
  re: new Float64Array(length + 1),
  im: new Float64Array(length + 1),
  noiseDensity: new Float64Array(length + 1),
  farDensity: new Float64Array(length + 1),
});

/** Running sums of the first `length` values. */
export function addUp(values: Float64Array, sums: Float64Array, length: number): void {
  let sum = 0;
  for (let i = 0; i < length; i += 1) {
    sum += values[i];
    sums[i + 1] = sum;
  }
}

/**
 * The series from one index to another, turned back by the fork's offset.
 * The noise at each value is the near flank's, of the frame whose middle is closest.
 * @param offsetHz  the fork's pitch less the frequency that was moved to 0 Hz
 */
export function viewOf(series: ToneSeries, fromIndex: number, toIndex: number, offsetHz: number): ToneView {
  const view = new MovingView(series);
  view.show(fromIndex, toIndex, offsetHz);
  return view;
}

/** Noise-equivalent bandwidth of the mean of n values in a row, Hz. */
export const meanBandwidthHz = (view: ToneView, n: number): number =>
  Math.min(view.bandwidthHz, view.rateHz / n);

/** Power around an index: |mean of 2·half+1 values|², of as many of them as the view holds. */
export function coherentPower(view: ToneView, index: number, half: number): number {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length, index + half + 1);
  const x = stretchSum(view.sums.re, from, to);
  const y = stretchSum(view.sums.im, from, to);
  return (x * x + y * y) / ((to - from) * (to - from));
}

/** What noise alone adds to the coherent power there, on average. */
export function noisePower(view: ToneView, index: number, half: number): number {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length, index + half + 1);
  const n = to - from;
  return (stretchSum(view.sums.noiseDensity, from, to) / n) * meanBandwidthHz(view, n);
}

/** Tone power around an index: the coherent power, its noise taken off (may be negative). */
export const smoothedPower = (view: ToneView, index: number, half: number): number =>
  coherentPower(view, index, half) - noisePower(view, index, half);

/** Mean |value|² over [from, to), as far as the view reaches; 0 of none. */
export function meanPower(view: ToneView, fromIndex: number, toIndex: number): number {
  const from = Math.max(0, fromIndex);
  const to = Math.min(view.length, toIndex);
  let sum = 0;
  for (let k = from; k < to; k += 1) sum += view.re[k] ** 2 + view.im[k] ** 2;
  return sum / Math.max(1, to - from);
}

/** Sum over [from, to) from running sums. */
export const stretchSum = (sums: Float64Array, from: number, to: number): number => sums[to] - sums[from];
