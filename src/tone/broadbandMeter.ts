import Meyda from 'meyda';

/** 21 ms at 48 kHz. */
export const BROADBAND_FRAME = 1024;
/** Frames that are kept: two seconds and more, far longer than a level point waits. */
const KEPT = 128;

/** Meyda.extract would window and transform every frame; its rms alone needs neither. */
const { rms } = Meyda.featureExtractors as {
  rms: (frame: { readonly signal: Float32Array }) => number;
};

/**
 * The whole sound's level, for comparison with the level at the fork's pitch: mean squares of frames of 1024 samples,
 * of which the newest are kept.
 */
export class BroadbandMeter {
  readonly #frameS: number;
  /** A ring: frame k at k % KEPT. */
  readonly #meanSquares = new Float64Array(KEPT);
  readonly #features: { signal: Float32Array } = { signal: new Float32Array(0) };
  #frames = 0;

  constructor(sampleRateHz: number) {
    this.#frameS = BROADBAND_FRAME / sampleRateHz;
  }

  /** @param frame  the next BROADBAND_FRAME samples */
  push(frame: Float32Array): void {
    this.#features.signal = frame;
    this.#meanSquares[this.#frames % KEPT] = rms(this.#features) ** 2;
    this.#frames += 1;
  }

  /** The frame that a moment lies in, counted from 0. @param timeS  from the start of the sound, s */
  frameAt(timeS: number): number {
    return Math.floor(timeS / this.#frameS);
  }

  /**
   * Mean square, full scale 1, over the frames from one to another, both included, that are there and among the last
   * two seconds; 0 of none.
   */
  meanSquare(firstFrame: number, lastFrame: number): number {
    const from = Math.max(0, this.#frames - KEPT, firstFrame);
    const to = Math.min(this.#frames, lastFrame + 1);
    let sum = 0;
    for (let i = from; i < to; i += 1) sum += this.#meanSquares[i % KEPT];
    return sum / Math.max(1, to - from);
  }
}
