import { lowPassTaps, noiseBandwidthHz } from './lowPass.ts';

/** About this many complex values a second leave the first step (wide: fork and flanks). */
const WIDE_RATE_HZ = 1200;
/** The narrow output keeps every 12th: about 100 values a second. */
const NARROW_STEP = 12;
/** Flanks are looked at up to this distance from the fork's pitch. */
export const FLANK_REACH_HZ = 300;

/** Receives the two complex streams, value by value, in order of time. */
export interface ForkBandListener {
  /** Wide stream: the sound around the fork's pitch, moved to 0 Hz, ±300 Hz. */
  onWide(re: number, im: number): void;
  /** Narrow stream: ±20 Hz. |value| is the tone's amplitude (peak, not rms). */
  onNarrow(re: number, im: number): void;
}

/**
 * Quadrature demodulation at one pitch: two complex streams around 0 Hz, the phase kept.
 *
 * The mixing is folded into the filter: complex band-pass taps run over the real samples only where an output
 * is due, and the output is turned back by the carrier's phase there. Each output depends on its own
 * stretch of samples alone, so blocks of any size give the same values to the last bit.
 * Value k of a stream belongs to the time k / rate on the samples' own time axis: delays are taken out.
 */
export class ForkBand {
  readonly wideRateHz: number;
  readonly narrowRateHz: number;
  /** Noise-equivalent bandwidth of the narrow stream, both sides of the pitch together, Hz. */
  readonly narrowBandwidthHz: number;
  /** How long after a moment its narrow value comes out, s. */
  readonly delayS: number;
  readonly #step: number;
  /** Half of the taps, from the middle outwards: the real parts are even about it, the imaginary ones odd. */
  readonly #tapsRe: Float64Array;
  readonly #tapsIm: Float64Array;
  readonly #turn: number;
  readonly #listener: ForkBandListener;
  #buffer: Float32Array;
  #filled: number;
  #wideCount = 0;
  readonly #narrowTaps: Float64Array;
  readonly #wideRe: Float64Array;
  readonly #wideIm: Float64Array;
  #wideFilled: number;

  /**
   * @param sampleRateHz  8000..192000
   * @param frequencyHz  the pitch that is moved to 0 Hz; > 60 and at most 0.42 of the sample rate
   * @throws RangeError when the pitch doesn't fit the sample rate
   */
  constructor(sampleRateHz: number, frequencyHz: number, listener: ForkBandListener) {
    if (!(sampleRateHz >= 8000 && sampleRateHz <= 384000)) {
      throw new RangeError(`sampleRateHz must be 8000..384000, got ${sampleRateHz}`);
    }
    if (!(frequencyHz >= 60 && frequencyHz <= 0.42 * sampleRateHz)) {
      throw new RangeError(
        `frequencyHz must be 60..${0.42 * sampleRateHz} at ${sampleRateHz} samples a second, got ${frequencyHz}`,
      );
    }
    this.#listener = listener;
    this.#step = Math.max(1, Math.round(sampleRateHz / WIDE_RATE_HZ));
    this.wideRateHz = sampleRateHz / this.#step;
    this.narrowRateHz = this.wideRateHz / NARROW_STEP;

    // What aliases into ±300 Hz must be gone: the stop band starts 300 Hz below the wide rate.
    const transitionHz = this.wideRateHz - 2 * FLANK_REACH_HZ;
    const taps = lowPassTaps(sampleRateHz, this.wideRateHz / 2, transitionHz, 70);
    const half = (taps.length - 1) / 2;
    this.#turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
    // A real sine of amplitude A is A/2 at each of ±f: twice the taps give A.
    const outer = taps.subarray(half);
    this.#tapsRe = outer.map((tap, i) => 2 * tap * Math.cos(this.#turn * i));
    this.#tapsIm = outer.map((tap, i) => -2 * tap * Math.sin(this.#turn * i));
    this.#buffer = new Float32Array(taps.length + 8192);
    this.#filled = half;

    this.#narrowTaps = lowPassTaps(this.wideRateHz, 27, 44, 60);
    this.narrowBandwidthHz = noiseBandwidthHz(this.#narrowTaps, this.wideRateHz);
    this.delayS = half / sampleRateHz + (this.#narrowTaps.length - 1) / 2 / this.wideRateHz;
    this.#wideRe = new Float64Array(this.#narrowTaps.length + 1024);
    this.#wideIm = new Float64Array(this.#narrowTaps.length + 1024);
    this.#wideFilled = (this.#narrowTaps.length - 1) / 2;
  }

  /** @param samples  mono, any length */
  push(samples: Float32Array): void {
    let taken = 0;
    while (taken < samples.length) {
      const room = this.#buffer.length - this.#filled;
      const part = samples.subarray(taken, taken + room);
      this.#buffer.set(part, this.#filled);
      this.#filled += part.length;
      taken += part.length;
      this.#drain();
    }
  }

  /** Pushes the silence that lets the last values out. Nothing may be pushed afterwards. */
  finish(): void {
    const tail = this.#tapsRe.length - 1 + ((this.#narrowTaps.length - 1) / 2) * this.#step;
    this.push(new Float32Array(tail));
  }

  #drain(): void {
    const tapsRe = this.#tapsRe;
    const tapsIm = this.#tapsIm;
    const buffer = this.#buffer;
    const half = tapsRe.length - 1;
    let start = 0;
    for (; start + 2 * half + 1 <= this.#filled; start += this.#step) {
      const middle = start + half;
      let re = (buffer[middle] as number) * (tapsRe[0] as number);
      let im = 0;
      for (let i = 1; i <= half; i += 1) {
        const earlier = buffer[middle - i] as number;
        const later = buffer[middle + i] as number;
        re += (later + earlier) * (tapsRe[i] as number);
        im += (later - earlier) * (tapsIm[i] as number);
      }
      const angle = -this.#turn * this.#step * this.#wideCount;
      const cos = Math.cos(angle);
      const sin = Math.sin(angle);
      this.#wideCount += 1;
      this.#emitWide(re * cos - im * sin, re * sin + im * cos);
    }
    // A step longer than the filter may point past the end: keep what is left, count what is owed.
    this.#buffer.copyWithin(0, start, this.#filled);
    this.#filled -= start;
  }

  #emitWide(re: number, im: number): void {
    this.#listener.onWide(re, im);
    this.#wideRe[this.#wideFilled] = re;
    this.#wideIm[this.#wideFilled] = im;
    this.#wideFilled += 1;
    if (this.#wideFilled >= this.#narrowTaps.length) this.#drainNarrow();
  }

  #drainNarrow(): void {
    const taps = this.#narrowTaps;
    let start = 0;
    for (; start + taps.length <= this.#wideFilled; start += NARROW_STEP) {
      let re = 0;
      let im = 0;
      for (let i = 0; i < taps.length; i += 1) {
        const tap = taps[i] as number;
        re += tap * (this.#wideRe[start + i] as number);
        im += tap * (this.#wideIm[start + i] as number);
      }
      this.#listener.onNarrow(re, im);
    }
    if (start === 0) return;
    this.#wideRe.copyWithin(0, start, this.#wideFilled);
    this.#wideIm.copyWithin(0, start, this.#wideFilled);
    this.#wideFilled -= start;
  }
}
