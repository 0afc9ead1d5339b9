import Meyda from 'meyda';

/** 21 ms at 48 kHz. */
export const BROADBAND_FRAME = 1024;

/** Meyda.extract would window and transform every frame; its rms alone needs neither. */
const { rms } = Meyda.featureExtractors as {
  rms: (frame: { readonly signal: Float32Array }) => number;
};

/**
 * The whole sound's level, for comparison with the level at the fork's pitch: rms of frames of 1024 samples.
 */
export class BroadbandMeter {
  readonly #frame = new Float32Array(BROADBAND_FRAME);
  #filled = 0;
  #meanSquare = 0;

  /** Mean square of the last full frame; 0 before the first. */
  get meanSquare(): number {
    return this.#meanSquare;
  }

  /** Takes samples until a frame is full. @returns how many were taken */
  take(samples: Float32Array): number {
    // A whole frame needs no copy.
    if (this.#filled === 0 && samples.length === BROADBAND_FRAME) {
      this.#meanSquare = rms({ signal: samples }) ** 2;
      return BROADBAND_FRAME;
    }
    const part = samples.subarray(0, BROADBAND_FRAME - this.#filled);
    this.#frame.set(part, this.#filled);
    this.#filled += part.length;
    if (this.#filled === BROADBAND_FRAME) {
      this.#meanSquare = rms({ signal: this.#frame }) ** 2;
      this.#filled = 0;
    }
    return part.length;
  }
}
