/** Narrow values from one frame's middle to the next: 0.08 s. */
export const VALUES_PER_FRAME = 8;

/**
 * The noise beside the fork's pitch, frame by frame, growing. Frame k is the look whose middle lies at narrow value
 * k × VALUES_PER_FRAME. Densities are mean squares per hertz of the complex stream.
 */
export class FlankRows {
  #near = new Float64Array(512);
  #far = new Float64Array(512);
  #floor = new Float64Array(512);
  #length = 0;

  /** Frames so far. */
  get length(): number {
    return this.#length;
  }

  /**
   * Noise density 19–70 Hz beside the pitch, mean of both sides; of a standing line only what it does at the pitch.
   * Like the others valid up to `length` and replaced when the rows grow: don't keep it across a push.
   */
  get near(): Float64Array {
    return this.#near;
  }

  /** Noise density 70–300 Hz beside the pitch, likewise. */
  get far(): Float64Array {
    return this.#far;
  }

  /**
   * Density that single lines (another fork, hum) can't raise: median over all bins of both flanks, scaled to the
   * mean of a chi-square with two degrees of freedom (÷ ln 2).
   */
  get floor(): Float64Array {
    return this.#floor;
  }

  /** The frame whose middle is closest to a narrow value; −1 before the first frame. */
  frameAt(valueIndex: number): number {
    return Math.min(this.#length - 1, Math.round(valueIndex / VALUES_PER_FRAME));
  }

  push(near: number, far: number, floor: number): void {
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

function doubled(values: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * values.length);
  larger.set(values);
  return larger;
}
