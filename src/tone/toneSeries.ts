import { SideBandNoise } from './sideBandNoise.ts';
import type { ToneSegment } from './toneSegment.ts';

/**
 * The tone stage's whole output so far: narrow complex values and the side bands' noise, growing.
 * Value k belongs to k / rateHz on the source's time axis.
 */
export class ToneSeries {
  readonly rateHz: number;
  readonly bandwidthHz: number;
  /** The noise beside the fork's frequency, frame by frame. */
  readonly sideBands = new SideBandNoise();
  private rePart = new Float32Array(8192);
  private imPart = new Float32Array(8192);
  private count = 0;
  /** Indices of values next to which sound was lost. */
  private readonly gapList: number[] = [];

  /** @param bandwidthHz  noise-equivalent bandwidth of one value */
  constructor(rateHz: number, bandwidthHz: number) {
    this.rateHz = rateHz;
    this.bandwidthHz = bandwidthHz;
  }

  get length(): number {
    return this.count;
  }

  /** Real parts; valid up to `length`, replaced when the series grows: don't keep it across a push. */
  get re(): Float32Array {
    return this.rePart;
  }

  /** Imaginary parts, like `re`. */
  get im(): Float32Array {
    return this.imPart;
  }

  get gaps(): readonly number[] {
    return this.gapList;
  }

  /** The values [from, to), for work that ends before the next push. */
  segment(from: number, to: number): ToneSegment {
    return { re: this.rePart, im: this.imPart, from, to, rateHz: this.rateHz };
  }

  /** @param count  values taken of `re` and `im` */
  pushValues(re: ArrayLike<number>, im: ArrayLike<number>, count: number): void {
    while (this.count + count > this.rePart.length) {
      this.rePart = doubled(this.rePart);
      this.imPart = doubled(this.imPart);
    }
    for (let i = 0; i < count; i += 1) {
      this.rePart[this.count + i] = re[i];
      this.imPart[this.count + i] = im[i];
    }
    this.count += count;
  }

  markGap(timeS: number): void {
    this.gapList.push(Math.round(timeS * this.rateHz));
  }

  /** Is there lost sound between these two indices, both included? */
  hasGap(fromIndex: number, toIndex: number): boolean {
    for (const gap of this.gapList) if (gap >= fromIndex && gap <= toIndex) return true;
    return false;
  }
}

function doubled(values: Float32Array): Float32Array<ArrayBuffer> {
  const larger = new Float32Array(2 * values.length);
  larger.set(values);
  return larger;
}
