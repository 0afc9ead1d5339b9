import FFT from 'fft.js';
import { VALUES_PER_FRAME } from './sideBandNoise.ts';
import type { FlankRows } from './sideBandNoise.ts';
import { FLANK_REACH_HZ, NARROW_STEP, narrowTapsAt } from './demodulator.ts';
import type { StreamPart } from './demodulator.ts';
import { powerPassed } from './lowPass.ts';
import { StandingLines } from './steadyLines.ts';
import { SteadyToneFinder } from './steadyTone.ts';
import type { SteadyTone } from './steadyTone.ts';
import { placeOfPartedMedian } from '../numeric/quickselect.ts';

const SIZE = 256;
/** Wide values between two looks: 96 of 1200 a second, 0.08 s. */
const HOP = VALUES_PER_FRAME * NARROW_STEP;
const NEAR_HZ = 19;
const MIDDLE_HZ = 70;
/** A line this far under the fork's own, as a ratio of powers, spoils nothing: 50 dB. */
const LEAST_LINE = 1e-5;
/** Below this real frequency the mirror image of the spectrum and mains hum spoil the flank. */
const LOWEST_HZ = 60;

/**
 * Noise beside the fork's pitch: a talker lights the flanks up, a fork does not.
 * Blackman–Harris frames of 0.21 s: the fork's own line is 92 dB down outside ±19 Hz.
 * @see Harris 1978, Proc. IEEE 66, 51 (4-term window)
 */
export class FlankMeter {
  readonly #fft = new FFT(SIZE);
  readonly #window = new Float64Array(SIZE);
  readonly #frame = new Float64Array(2 * SIZE);
  readonly #spectrum = new Float64Array(2 * SIZE);
  readonly #re = new Float64Array(SIZE);
  readonly #im = new Float64Array(SIZE);
  /** Of both flanks, the near ones first, and how many these are. */
  readonly #bins: readonly number[];
  readonly #near: number;
  /** Density at each of the bins; the same to be reordered. */
  readonly #all: Float64Array;
  readonly #parted: Float64Array;
  readonly #lines: StandingLines;
  /** Of a line in each of the bins, see lineLeak. */
  readonly #leaks: Float64Array;
  readonly #scale: number;
  readonly #steady: SteadyToneFinder;
  readonly #lowestOffsetHz: number;
  /** Of the newest frame; kept, since a number that is handed on is litter. */
  #nearDensity = 0.5;
  #farDensity = 0.5;
  /** Values before the first frame's middle are taken as silence. */
  #position = 0;
  #untilNext = SIZE / 2;

  /** @param frequencyHz  the pitch that sits at 0 Hz of the wide stream */
  constructor(wideRateHz: number, frequencyHz: number) {
    this.#steady = new SteadyToneFinder(SIZE, wideRateHz / SIZE);
    this.#lowestOffsetHz = Math.max(-FLANK_REACH_HZ, LOWEST_HZ - frequencyHz);
    let squares = 0;
    for (let i = 0; i < SIZE; i += 1) {
      const x = (2 * Math.PI * i) / SIZE;
      const w = 0.35875 - 0.48829 * Math.cos(x) + 0.14128 * Math.cos(2 * x) - 0.01168 * Math.cos(3 * x);
      this.#window[i] = w;
      squares += w * w;
    }
    this.#scale = 1 / (squares * wideRateHz);
    const near: number[] = [];
    const far: number[] = [];
    const offsetOf = (bin: number): number => ((bin < SIZE / 2 ? bin : bin - SIZE) * wideRateHz) / SIZE;
    for (let bin = 0; bin < SIZE; bin += 1) {
      const offsetHz = offsetOf(bin);
      const distanceHz = Math.abs(offsetHz);
      if (frequencyHz + offsetHz < LOWEST_HZ && offsetHz < -40) continue;
      if (distanceHz >= NEAR_HZ && distanceHz < MIDDLE_HZ) near.push(bin);
      else if (distanceHz >= MIDDLE_HZ && distanceHz <= FLANK_REACH_HZ) far.push(bin);
    }
    this.#near = near.length;
    this.#bins = [...near, ...far];
    this.#all = new Float64Array(this.#bins.length);
    this.#parted = new Float64Array(this.#bins.length);
    this.#lines = new StandingLines(this.#bins.length);
    const narrowTaps = narrowTapsAt(wideRateHz);
    this.#leaks = Float64Array.from(this.#bins, (bin) =>
      lineLeak(offsetOf(bin), powerPassed(narrowTaps, offsetOf(bin), wideRateHz)),
    );
  }

  /** The strongest line within ±300 Hz of the pitch that stood through much of what was heard; null: none. */
  get steadyTone(): SteadyTone | null {
    return this.#steady.strongest(this.#lowestOffsetHz, FLANK_REACH_HZ);
  }

  /** Takes values of the wide stream; a frame is due every 0.08 s, its middle half a frame back. */
  push({ re, im, count }: StreamPart, out: FlankRows): void {
    for (let taken = 0; taken < count;) {
      const part = Math.min(count - taken, this.#untilNext);
      for (let i = taken; i < taken + part; i += 1) {
        // A ring: the newest SIZE values, oldest at #position.
        this.#re[this.#position] = re[i];
        this.#im[this.#position] = im[i];
        this.#position = (this.#position + 1) % SIZE;
      }
      taken += part;
      this.#untilNext -= part;
      if (this.#untilNext > 0) continue;
      this.#untilNext = HOP;
      this.#look(out);
    }
  }

  #look(out: FlankRows): void {
    for (let i = 0; i < SIZE; i += 1) {
      const at = (this.#position + i) % SIZE;
      const w = this.#window[i];
      this.#frame[2 * i] = w * this.#re[at];
      this.#frame[2 * i + 1] = w * this.#im[at];
    }
    this.#fft.transform(this.#spectrum, this.#frame);
    this.#readDensities();
    this.#parted.set(this.#all);
    const floorDensity = this.#parted[placeOfPartedMedian(this.#parted)] / Math.LN2;
    this.#lines.floor = floorDensity;
    this.#lines.least = LEAST_LINE * this.#densityAt(0);
    this.#lines.push(this.#all);
    this.#readMeans();
    this.#steady.push(this.#spectrum, floorDensity / this.#scale + 1e-30);
    out.push(this.#nearDensity, this.#farDensity, floorDensity);
  }

  #readDensities(): void {
    for (let i = 0; i < this.#bins.length; i += 1) {
      this.#all[i] = this.#densityAt(this.#bins[i]);
    }
  }

  #densityAt(bin: number): number {
    const re = this.#spectrum[2 * bin];
    const im = this.#spectrum[2 * bin + 1];
    return (re * re + im * im) * this.#scale;
  }

  /** Means over either flank's bins; of a standing line only what it does at the pitch. */
  #readMeans(): void {
    let near = 0;
    let far = 0;
    for (let i = 0; i < this.#bins.length; i += 1) {
      const share = this.#lines.stands(i) ? this.#leaks[i] : 1;
      const density = share * this.#all[i];
      if (i < this.#near) near += density;
      else far += density;
    }
    this.#nearDensity = near / this.#near;
    this.#farDensity = far / (this.#bins.length - this.#near);
  }
}

/**
 * What a line beside the pitch does at the pitch, as a share of what noise of its power spread over the near flanks
 * would do: of what has passed the narrow filter, as a share of its power, a mean over 0.2 s lets 1 / (π f 0.2 s)² through.
 */
function lineLeak(offsetHz: number, passed: number): number {
  const meanS = 0.2;
  const flankHz = 2 * (MIDDLE_HZ - NEAR_HZ);
  return Math.min(1, (passed / (Math.PI * offsetHz * meanS) ** 2) * flankHz * meanS);
}
