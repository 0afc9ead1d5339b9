import { doubled } from '../numeric/doubled.ts';

/** Narrow values from one frame's middle to the next: 0.08 s. */
export const VALUES_PER_FRAME = 8;

/** Noise densities of one frame, mean squares per hertz of the complex stream. */
export interface SideBandFrame {
  readonly near: number;
  readonly far: number;
  readonly floor: number;
}

/**
 * The noise beside the fork's frequency, frame by frame, growing. Frame k is the spectrum whose middle lies at narrow
 * value k × VALUES_PER_FRAME. Densities are mean squares per hertz of the complex stream. The arrays are valid up to
 * `length` and replaced when they grow: don't keep them across a push.
 */
export class SideBandNoise {
  private nearValues = new Float64Array(512);
  private farValues = new Float64Array(512);
  private floorValues = new Float64Array(512);
  private count = 0;

  /** Frames so far. */
  get length(): number {
    return this.count;
  }

  /** Density 19–70 Hz beside the fork's frequency, mean of both sides; of a steady line only what it does at the fork's. */
  get near(): Float64Array {
    return this.nearValues;
  }

  /** Density 70–300 Hz beside it, likewise. */
  get far(): Float64Array {
    return this.farValues;
  }

  /**
   * Density that single lines (another fork, hum) can't raise: median over all bins of both side bands, scaled to the
   * mean of a chi-square with two degrees of freedom (÷ ln 2).
   */
  get floor(): Float64Array {
    return this.floorValues;
  }

  /** The frame whose middle is closest to a narrow value; −1 before the first frame. */
  frameAt(valueIndex: number): number {
    return Math.min(this.count - 1, Math.round(valueIndex / VALUES_PER_FRAME));
  }

  push({ near, far, floor }: SideBandFrame): void {
    if (this.count === this.nearValues.length) {
      this.nearValues = doubled(this.nearValues);
      this.farValues = doubled(this.farValues);
      this.floorValues = doubled(this.floorValues);
    }
    this.nearValues[this.count] = near;
    this.farValues[this.count] = far;
    this.floorValues[this.count] = floor;
    this.count += 1;
  }
}
