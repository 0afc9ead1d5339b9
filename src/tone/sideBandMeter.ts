import FFT from 'fft.js';
import { lowerMedian } from '../numeric/quickselect.ts';
import { NARROW_STEP, narrowTapsAt, SIDE_BAND_REACH_HZ } from './demodulator.ts';
import type { LentValues } from './demodulator.ts';
import { powerResponse } from './lowPass.ts';
import { VALUES_PER_FRAME } from './sideBandNoise.ts';
import type { SideBandNoise } from './sideBandNoise.ts';
import { SteadyLines } from './steadyLines.ts';
import { SteadyToneFinder } from './steadyTone.ts';
import type { SteadyTone } from './steadyTone.ts';

const SIZE = 256;
/** Wide values from one frame to the next: 96 of 1200 a second, 0.08 s. */
const HOP = VALUES_PER_FRAME * NARROW_STEP;
const NEAR_HZ = 19;
const MIDDLE_HZ = 70;
/** A line this far under the fork's own, as a ratio of powers, spoils nothing: 50 dB. */
const LEAST_LINE = 1e-5;
/** Below this real frequency the mirror image of the spectrum and mains hum spoil the side band. */
const LOWEST_HZ = 60;

/**
 * Noise in the bands on either side of the fork's frequency: a talker fills them, a fork does not.
 * Blackman–Harris frames of 0.21 s: the fork's own line is 92 dB down outside ±19 Hz.
 * @see Harris 1978, Proc. IEEE 66, 51 (4-term window)
 */
export class SideBandMeter {
  private readonly fft = new FFT(SIZE);
  private readonly window = blackmanHarris();
  private readonly frame = new Float64Array(2 * SIZE);
  private readonly spectrum = new Float64Array(2 * SIZE);
  private readonly re = new Float64Array(SIZE);
  private readonly im = new Float64Array(SIZE);
  /** Bins of both sides, the near bands' first, and how many these are. */
  private readonly bins: readonly number[];
  private readonly nearBins: number;
  /** Density at each of the bins. */
  private readonly densities: Float64Array;
  private readonly lines: SteadyLines;
  /** Of a line in each of the bins, see lineLeak. */
  private readonly leaks: Float64Array;
  /** Power of a bin to density. */
  private readonly scale: number;
  private readonly steady: SteadyToneFinder;
  private readonly lowestOffsetHz: number;
  /** A ring of the newest values, the oldest here. Values before the first frame's middle are taken as silence. */
  private position = 0;
  private untilNext = SIZE / 2;

  /** @param frequencyHz  that sits at 0 Hz of the wide stream */
  constructor(wideRateHz: number, frequencyHz: number) {
    this.steady = new SteadyToneFinder(SIZE, wideRateHz / SIZE);
    this.lowestOffsetHz = Math.max(-SIDE_BAND_REACH_HZ, LOWEST_HZ - frequencyHz);
    this.scale = 1 / (this.window.reduce((sum, w) => sum + w * w, 0) * wideRateHz);
    const near: number[] = [];
    const far: number[] = [];
    const offsetOf = (bin: number): number => ((bin < SIZE / 2 ? bin : bin - SIZE) * wideRateHz) / SIZE;
    for (let bin = 0; bin < SIZE; bin += 1) {
      const offsetHz = offsetOf(bin);
      const distanceHz = Math.abs(offsetHz);
      if (frequencyHz + offsetHz < LOWEST_HZ && offsetHz < -40) continue;
      if (distanceHz >= NEAR_HZ && distanceHz < MIDDLE_HZ) near.push(bin);
      else if (distanceHz >= MIDDLE_HZ && distanceHz <= SIDE_BAND_REACH_HZ) far.push(bin);
    }
    this.nearBins = near.length;
    this.bins = [...near, ...far];
    this.densities = new Float64Array(this.bins.length);
    this.lines = new SteadyLines(this.bins.length);
    const narrowTaps = narrowTapsAt(wideRateHz);
    this.leaks = Float64Array.from(this.bins, (bin) =>
      lineLeak(offsetOf(bin), powerResponse(narrowTaps, offsetOf(bin), wideRateHz)),
    );
  }

  /** The strongest line within ±300 Hz of the fork's frequency that stood through much of what was heard; null: none. */
  get steadyTone(): SteadyTone | null {
    return this.steady.strongest(this.lowestOffsetHz, SIDE_BAND_REACH_HZ);
  }

  /** Takes values of the wide stream; a frame is due every 0.08 s, its middle half a frame back. */
  push({ re, im, count }: LentValues, out: SideBandNoise): void {
    for (let taken = 0; taken < count;) {
      const part = Math.min(count - taken, this.untilNext);
      for (let i = taken; i < taken + part; i += 1) {
        this.re[this.position] = re[i];
        this.im[this.position] = im[i];
        this.position = (this.position + 1) % SIZE;
      }
      taken += part;
      this.untilNext -= part;
      if (this.untilNext > 0) continue;
      this.untilNext = HOP;
      this.addFrame(out);
    }
  }

  private addFrame(out: SideBandNoise): void {
    for (let i = 0; i < SIZE; i += 1) {
      const at = (this.position + i) % SIZE;
      const w = this.window[i];
      this.frame[2 * i] = w * this.re[at];
      this.frame[2 * i + 1] = w * this.im[at];
    }
    this.fft.transform(this.spectrum, this.frame);
    for (let i = 0; i < this.bins.length; i += 1) this.densities[i] = this.densityAt(this.bins[i]);
    const floor = lowerMedian(this.densities.slice()) / Math.LN2;
    this.lines.push(this.densities, { floor, least: LEAST_LINE * this.densityAt(0) });
    this.steady.push(this.spectrum, floor / this.scale + 1e-30);
    out.push({
      near: this.meanDensity(0, this.nearBins),
      far: this.meanDensity(this.nearBins, this.bins.length),
      floor,
    });
  }

  private densityAt(bin: number): number {
    const re = this.spectrum[2 * bin];
    const im = this.spectrum[2 * bin + 1];
    return (re * re + im * im) * this.scale;
  }

  /** Mean over some of the bins; of a steady line only what it does at the fork's frequency. */
  private meanDensity(from: number, to: number): number {
    let sum = 0;
    for (let i = from; i < to; i += 1) {
      sum += (this.lines.isSteady(i) ? this.leaks[i] : 1) * this.densities[i];
    }
    return sum / (to - from);
  }
}

function blackmanHarris(): Float64Array {
  return Float64Array.from({ length: SIZE }, (_, i) => {
    const x = (2 * Math.PI * i) / SIZE;
    return 0.35875 - 0.48829 * Math.cos(x) + 0.14128 * Math.cos(2 * x) - 0.01168 * Math.cos(3 * x);
  });
}

/**
 * What a line beside the fork's frequency does there, as a share of what noise of its power spread over the near bands
 * would do: of what has passed the narrow filter, as a share of its power, a mean over 0.2 s lets 1 / (π f 0.2 s)² through.
 */
function lineLeak(offsetHz: number, passed: number): number {
  const meanS = 0.2;
  const bandsHz = 2 * (MIDDLE_HZ - NEAR_HZ);
  return Math.min(1, (passed / (Math.PI * offsetHz * meanS) ** 2) * bandsHz * meanS);
}
