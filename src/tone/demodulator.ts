import { ComplexDecimator, MOST_AT_ONCE, RealDecimator } from './decimator.ts';
import { isWithin } from '../limits/limits.ts';
import { hearableFrequencyHz, SAMPLE_RATES_HZ } from './hearableFrequency.ts';
import { lowPassTaps, movingAverageTaps, noiseBandwidthHz } from './lowPass.ts';

/** About this many complex values a second leave the second step (wide: fork and side bands). */
const WIDE_RATE_HZ = 1200;
/** The first step leaves at least this many: what folds onto ±300 Hz lies where its taps let 70 dB less through. */
const LEAST_MIDDLE_RATE_HZ = 4800;
/** The narrow output keeps every 12th: about 100 values a second. */
export const NARROW_STEP = 12;
/** The side bands reach to this distance from the fork's frequency. */
export const SIDE_BAND_REACH_HZ = 300;

/**
 * Low-pass of the narrow stream, on the wide one.
 * @example
 * narrowTapsAt(1200).length // → 101
 */
export const narrowTapsAt = (wideRateHz: number): Float64Array => lowPassTaps(wideRateHz, 27, 44, 60);

/** Values of a stream, lent for the length of one call: the first `count` of arrays that the next push fills anew. */
export interface LentValues {
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly count: number;
}

/**
 * Quadrature demodulation (a digital down-converter) at one frequency: two complex streams around 0 Hz, the phase kept.
 *
 * Three steps of decimation. The mixing is folded into the first two: complex band-pass taps run over the samples only
 * where an output is due, and the second's output is turned back by the carrier's phase there. The first has few
 * taps, with zeros where the second's images lie: together they cost half of one long filter. Each output depends on
 * its own stretch of samples alone, so blocks of any size give the same values to the last bit.
 * Value k of a stream belongs to the time k / rate on the samples' own time axis, to half a sample: delays are taken out.
 */
export class QuadratureDemodulator {
  readonly wideRateHz: number;
  readonly narrowRateHz: number;
  /** Noise-equivalent bandwidth of the narrow stream, both sides of the frequency together, Hz. */
  readonly narrowBandwidthHz: number;
  /** How long after a moment its narrow value comes out, s. */
  readonly delayS: number;
  private readonly first: RealDecimator;
  private readonly second: ComplexDecimator;
  private readonly third: ComplexDecimator;
  /** Carrier's turn from one wide value to the next, rad. */
  private readonly wideTurn: number;
  private readonly tail: number;
  private wideSoFar = 0;

  /**
   * @param sampleRateHz  8000..384000
   * @param frequencyHz  that is moved to 0 Hz; at least 60 Hz and at most 0.42 of the sample rate
   * @throws RangeError when the frequency doesn't fit the sample rate
   */
  constructor(sampleRateHz: number, frequencyHz: number) {
    if (!isWithin(SAMPLE_RATES_HZ, sampleRateHz)) {
      const { lowest, highest } = SAMPLE_RATES_HZ;
      throw new RangeError(`sampleRateHz must be ${lowest}..${highest}, got ${sampleRateHz}`);
    }
    const hearable = hearableFrequencyHz(sampleRateHz);
    if (!isWithin(hearable, frequencyHz)) {
      throw new RangeError(
        `frequencyHz must be ${hearable.lowest}..${hearable.highest} at ${sampleRateHz} samples a second, got ${frequencyHz}`,
      );
    }
    const [firstStep, secondStep] = decimationSteps(sampleRateHz);
    const middleRateHz = sampleRateHz / firstStep;
    this.wideRateHz = middleRateHz / secondStep;
    this.narrowRateHz = this.wideRateHz / NARROW_STEP;

    const turn = (2 * Math.PI * frequencyHz) / sampleRateHz;
    this.wideTurn = turn * firstStep * secondStep;
    const firstTaps = movingAverageTaps(firstStep, 3);
    // What folds onto ±300 Hz must be gone: the stop band starts 300 Hz below the wide rate.
    const transitionHz = this.wideRateHz - 2 * SIDE_BAND_REACH_HZ;
    const secondTaps = lowPassTaps(middleRateHz, this.wideRateHz / 2, transitionHz, 70);
    const narrowTaps = narrowTapsAt(this.wideRateHz);
    this.narrowBandwidthHz = noiseBandwidthHz(narrowTaps, this.wideRateHz);
    // A real sine of amplitude A is A/2 at each of ±f: twice the taps give A.
    const doubled = firstTaps.map((tap) => 2 * tap);
    this.first = new RealDecimator(doubled, turn, firstStep);
    this.second = new ComplexDecimator(secondTaps, turn * firstStep, secondStep);
    this.third = new ComplexDecimator(narrowTaps, 0, NARROW_STEP);
    const delays = [
      firstTaps.length / 2,
      ((secondTaps.length - 1) / 2) * firstStep,
      ((narrowTaps.length - 1) / 2) * firstStep * secondStep,
    ];
    this.tail = Math.ceil(delays.reduce((sum, samples) => sum + samples));
    this.delayS = this.tail / sampleRateHz;
  }

  /**
   * @param samples  mono, any number
   * @param take  called as often as there is something: the wide stream, the sound around the frequency moved to 0 Hz,
   *   ±300 Hz, and the narrow one, ±20 Hz, whose |value| is the tone's amplitude (peak, not rms)
   */
  push(samples: Float32Array, take: (wide: LentValues, narrow: LentValues) => void): void {
    for (let taken = 0; taken < samples.length; taken += MOST_AT_ONCE) {
      const first = this.first;
      const second = this.second;
      const third = this.third;
      const isAll = samples.length <= MOST_AT_ONCE;
      const middle = first.push(isAll ? samples : samples.subarray(taken, taken + MOST_AT_ONCE));
      const wide = second.push(first.re, first.im, middle);
      this.turnBack(second.re, second.im, wide);
      const narrow = third.push(second.re, second.im, wide);
      take({ re: second.re, im: second.im, count: wide }, { re: third.re, im: third.im, count: narrow });
    }
  }

  /** Pushes the silence that lets the last values out. Nothing may be pushed afterwards. */
  finish(take: (wide: LentValues, narrow: LentValues) => void): void {
    this.push(new Float32Array(this.tail), take);
  }

  private turnBack(re: Float64Array, im: Float64Array, count: number): void {
    for (let i = 0; i < count; i += 1) {
      const angle = -this.wideTurn * (this.wideSoFar + i);
      const cos = Math.cos(angle);
      const sin = Math.sin(angle);
      const x = re[i];
      const y = im[i];
      re[i] = x * cos - y * sin;
      im[i] = x * sin + y * cos;
    }
    this.wideSoFar += count;
  }
}

/** How many samples make one middle value, and how many of these a wide one: as few as can be that come near the rate. */
function decimationSteps(sampleRateHz: number): [number, number] {
  let best: [number, number] = [1, 1];
  let bestOff = Infinity;
  for (let first = Math.max(1, Math.floor(sampleRateHz / LEAST_MIDDLE_RATE_HZ)); first >= 1; first -= 1) {
    const second = Math.max(1, Math.round(sampleRateHz / first / WIDE_RATE_HZ));
    const off = Math.abs(sampleRateHz / (first * second) / WIDE_RATE_HZ - 1);
    if (off < 0.03) return [first, second];
    if (off < bestOff) {
      best = [first, second];
      bestOff = off;
    }
  }
  return best;
}
