import Meyda from 'meyda';

/** A power of two, 21 ms at 48 kHz: Meyda transforms each frame even for its rms, and short frames cost it less. */
export const BROADBAND_FRAME = 1024;

/**
 * The whole sound's level, for comparison with the level at the fork's pitch: rms of frames of 1024 samples
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
