import Meyda from 'meyda';

/** A power of two, about 0.1 s at 48 kHz; every sample counts once. */
export const BROADBAND_FRAME = 4096;

/**
 * The whole sound's level, for comparison with the level at the fork's pitch: rms of frames of 4096 samples
 * (rectangular window, so that the rms is that of the sound itself).
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
    const part = samples.subarray(0, BROADBAND_FRAME - this.#filled);
    this.#frame.set(part, this.#filled);
    this.#filled += part.length;
    if (this.#filled === BROADBAND_FRAME) {
      // These settings are global to the library: set them where they are used.
      Meyda.bufferSize = BROADBAND_FRAME;
      Meyda.windowingFunction = 'rect';
      const features = Meyda.extract(['rms'], this.#frame);
      this.#meanSquare = (features?.rms ?? 0) ** 2;
      this.#filled = 0;
    }
    return part.length;
  }
}
