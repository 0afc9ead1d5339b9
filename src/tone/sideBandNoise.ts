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
  #near = new Float64Array(512);
  #far = new Float64Array(512);
  #floor = new Float64Array(512);
  #length = 0;

  /** Frames so far. */
  get length(): number {
    return this.#length;
  }

  /** Density 19–70 Hz beside the fork's frequency, mean of both sides; of a steady line only what it does at the fork's. */
  get near(): Float64Array {
    return this.#near;
  }

  /** Density 70–300 Hz beside it, likewise. */
  get far(): Float64Array {
    return this.#far;
  }

  /**
   * Density that single lines (another fork, hum) can't raise: median over all bins of both side bands, scaled to the
   * mean of a chi-square with two degrees of freedom (÷ ln 2).
   */
  get floor(): Float64Array {
    return this.#floor;
  }

  /** The frame whose middle is closest to a narrow value; −1 before the first frame. */
  frameAt(valueIndex: number): number {
    return Math.min(this.#length - 1, Math.round(valueIndex / VALUES_PER_FRAME));
  }

  push({ near, far, floor }: SideBandFrame): void {
    if (this.#length === this.#near.length) {
      this.#near = doubled(this.#near);
      this.#far = doubled(this.#far);
      this.#floor = doubled(this.#floor);
    }
    this.#near[this.#length] = near;
    this.#far[this.#length] = far;
    this.#floor[this.#length] = floor;
    this.#length += 1;
  }
}
