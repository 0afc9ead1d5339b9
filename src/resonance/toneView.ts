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
  readonly series: ToneSeries;
  private rePart = new Float64Array(0);
  private imPart = new Float64Array(0);
  private nearDensities = new Float64Array(0);
  private farDensities = new Float64Array(0);
  private prefixSums = emptySums(0);
  private filled = 0;
  private startIndex = 0;
  private offsetHz = NaN;

  constructor(series: ToneSeries) {
    this.series = series;
  }

  get rateHz(): number {
    return this.series.rateHz;
  }

  get bandwidthHz(): number {
    return this.series.bandwidthHz;
  }

  get length(): number {
    return this.filled;
  }

  get firstIndex(): number {
    return this.startIndex;
  }

  get re(): Float64Array {
    return this.rePart;
  }

  get im(): Float64Array {
    return this.imPart;
  }

  get noiseDensity(): Float64Array {
    return this.nearDensities;
  }

  get farDensity(): Float64Array {
    return this.farDensities;
  }

  get sums(): ToneView['sums'] {
    return this.prefixSums;
  }

  /**
   * Shows the values [from, to) of the series, turned back by the fork's offset from the frequency that was moved to 0 Hz.
   * @param offsetHz  the fork's frequency less that one
   */
  show(from: number, to: number, offsetHz: number): void {
    const length = to - from;
    const shift = from - this.startIndex;
    // What was there already stays, unless the frame turns at another speed now.
    const isAnew = shift < 0 || length > this.rePart.length;
    const there = isAnew ? 0 : Math.max(0, Math.min(length, this.filled - shift));
    if (length > this.rePart.length) this.allocate(length);
    const kept = offsetHz === this.offsetHz ? there : 0;
    if (shift > 0 && there > 0) {
      for (const values of [this.rePart, this.imPart, this.nearDensities, this.farDensities]) {
        values.copyWithin(0, shift, this.filled);
      }
    }
    this.startIndex = from;
    this.filled = length;
    this.offsetHz = offsetHz;
    this.turn(kept);
    this.readNoise(Math.max(0, there - LATE_FRAMES));
    this.sum();
  }

  /** A view grows for a while before it moves: twice what is asked for, so that this happens a few times only. */
  private allocate(least: number): void {
    const length = 2 * least;
    this.rePart = new Float64Array(length);
    this.imPart = new Float64Array(length);
    this.nearDensities = new Float64Array(length);
    this.farDensities = new Float64Array(length);
    this.prefixSums = emptySums(length);
  }

  private turn(from: number): void {
    const { re, im, rateHz } = this.series;
    const turn = (-2 * Math.PI * this.offsetHz) / rateHz;
    for (let i = from; i < this.filled; i += 1) {
      const k = this.startIndex + i;
      const cos = Math.cos(turn * k);
      const sin = Math.sin(turn * k);
      this.rePart[i] = re[k] * cos - im[k] * sin;
      this.imPart[i] = re[k] * sin + im[k] * cos;
    }
  }

  /** The newest values take the newest frame there is, until their own comes. */
  private readNoise(from: number): void {
    const { sideBands } = this.series;
    for (let i = from; i < this.filled; i += 1) {
      const frame = sideBands.frameAt(this.startIndex + i);
      this.nearDensities[i] = frame < 0 ? 0 : sideBands.near[frame];
      this.farDensities[i] = frame < 0 ? 0 : sideBands.far[frame];
    }
  }

  private sum(): void {
    const sums = this.prefixSums;
    fillPrefixSums(this.rePart, sums.re, this.filled);
    fillPrefixSums(this.imPart, sums.im, this.filled);
    fillPrefixSums(this.nearDensities, sums.noiseDensity, this.filled);
    fillPrefixSums(this.farDensities, sums.farDensity, this.filled);
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
