import type { PassageFit, Reused } from './matchedFilter.ts';
import { meanBandwidthHz, smoothedPower, stretchSum } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/**
 * What speaks for or against a passage, each a physical quantity. Logarithms of powers are natural, so that a step
 * of 1 is 4.3 dB.
 */
export interface PassageEvidence {
  /** When the level peaked, index into the view. */
  readonly peakIndex: number;
  /** Middle of the fitted shape, index into the view. */
  readonly middle: number;
  /** ln of the fit's statistic. */
  readonly statistic: number;
  /** ln of the shape's energy over the noise of one value. */
  readonly signalToNoise: number;
  /** ln of the shape's energy over what the fit leaves. */
  readonly fit: number;
  /** ln of the statistic over what the same shape usually reaches around here. */
  readonly contrast: number;
  /** ln(1 + tone power / noise power) before the passage, the tone averaged in phase; 0 where no fork sounds. */
  readonly before: number;
  /** The same after it. */
  readonly after: number;
  /** ln of the peak's power over the power before it; at most the distance to the noise. */
  readonly riseOverBefore: number;
  readonly riseOverAfter: number;
  /** ln of the half width in s. */
  readonly width: number;
  /** ln of the time that was waited after the middle, in half widths. */
  readonly hindsight: number;
  /** Energy off the line through the origin as a share of the whole, 0..0.5: what no amplitude change can give. */
  readonly roundness: number;
  /**
   * Area that the phasor's path encloses, over that of a full circle as wide as the path, 0..1.5: about 1 for a passage
   * at whatever speed, 0 for a fork that comes and goes (a straight path out and back).
   */
  readonly loop: number;
  /** ln of the flanks' density during the passage over that around it: a talker's burst. */
  readonly burst: number;
  /** ln of the power in the far flanks (460 Hz in all) over the peak's: a voice's harmonic has neighbours, a fork none. */
  readonly company: number;
  /** cos of the phase step from before to after: the circle returns to where it began. */
  readonly phaseReturn: number;
  /** Smoothed powers (mean |tone|², noise off): at the peak, and the mean of before and after. */
  readonly peakPower: number;
  readonly sidePower: number;
  /** Noise mean square in the smoothed power's band. */
  readonly noisePower: number;
}

/** Half of the values that are averaged to follow a passage of this half width (in values). */
export const smoothingHalf = (halfWidth: number): number =>
  Math.max(2, Math.min(15, Math.round(0.25 * halfWidth)));

/** Bandwidth of both far flanks together, 70–300 Hz on either side, Hz. */
const FAR_FLANKS_HZ = 460;

/**
 * Looks at one fit with all that stands before and after it in the view.
 * @param afterLimit  last index that may be used (a live look ends at the present)
 * @param evidence  is filled
 */
export function gatherEvidence(
  view: ToneView,
  fit: PassageFit,
  afterLimit: number,
  evidence: Reused<PassageEvidence>,
): void {
  const rate = view.rateHz;
  const { shape, after: afterCells, step } = fit.template;
  const w = shape.halfWidthS * rate;
  const { middle } = fit;
  const half = smoothingHalf(w);

  // The level's own maximum near the middle of the shape.
  const reach = Math.round(w + 0.08 * rate);
  const first = Math.max(0, Math.round(middle) - reach);
  const last = Math.min(afterLimit, Math.round(middle) + reach);
  let peakIndex = first;
  let peakPower = -Infinity;
  for (let k = first; k <= last; k += 1) {
    const power = smoothedPower(view, k, Math.min(half, afterLimit - k + half));
    if (power > peakPower) {
      peakPower = power;
      peakIndex = k;
    }
  }
  const gap = 1.8 * w + 0.03 * rate;
  const span = Math.max(0.12 * rate, 2.5 * w);
  const before = readSide(SIDES[0], view, Math.round(middle - gap - span), Math.round(middle - gap));
  const afterFrom = Math.min(middle + gap, afterLimit - 0.1 * rate);
  const afterTo = Math.min(middle + gap + span, afterLimit);
  const after = readSide(SIDES[1], view, Math.round(afterFrom), Math.round(afterTo));
  const noisePower = view.noiseDensity[peakIndex] * meanBandwidthHz(view, 2 * half + 1) + 1e-30;
  const peak = Math.max(peakPower, noisePower);
  const beforePower = Math.max(before.power - before.noise, 0);
  const afterPower = Math.max(after.power - after.noise, 0);

  const { noiseDensity, farDensity } = view.sums;
  const coreFrom = Math.round(middle - w);
  const coreTo = Math.round(Math.min(afterLimit, middle + w));
  const core = meanOver(noiseDensity, coreFrom, coreTo, view.length);
  const aroundFrom = Math.round(middle - 3 * rate);
  const aroundTo = Math.round(Math.min(afterLimit, middle + 3 * rate));
  const around = meanOver(noiseDensity, aroundFrom, aroundTo, view.length);
  const far = meanOver(farDensity, coreFrom, coreTo, view.length);
  const both = Math.sqrt(before.power * after.power);
  evidence.peakIndex = peakIndex;
  evidence.middle = middle;
  evidence.statistic = Math.log(fit.statistic);
  evidence.signalToNoise = Math.log((fit.gain + 1e-30) / (fit.noiseMeanSquare + 1e-30));
  evidence.fit = Math.log((fit.gain + 1e-30) / (fit.residual + 1e-30));
  evidence.contrast = Math.log(fit.statistic / (1 + fit.usual));
  evidence.before = Math.log(1 + before.power / before.noise);
  evidence.after = Math.log(1 + after.power / after.noise);
  evidence.riseOverBefore = Math.log(peak / Math.max(beforePower, noisePower));
  evidence.riseOverAfter = Math.log(peak / Math.max(afterPower, noisePower));
  evidence.width = Math.log(shape.halfWidthS);
  evidence.hindsight = Math.log((afterCells * step) / w);
  const roundTo = Math.min(afterLimit, Math.round(middle + 2.5 * w));
  evidence.roundness = roundness(view, Math.round(middle - 2.5 * w), roundTo);
  const loopTo = Math.min(afterLimit, Math.round(middle + 3 * w));
  evidence.loop = loopArea(view, Math.round(middle - 3 * w), loopTo, half);
  evidence.burst = Math.log((core + 1e-30) / (around + 1e-30));
  evidence.company = Math.log((FAR_FLANKS_HZ * far + 1e-30) / peak);
  evidence.phaseReturn = both > 0 ? (before.re * after.re + before.im * after.im) / both : 0;
  evidence.peakPower = peak;
  evidence.sidePower = (beforePower + afterPower) / 2;
  evidence.noisePower = noisePower;
}

/** Room for evidence. */
export const blankEvidence = (): Reused<PassageEvidence> => ({
  peakIndex: 0,
  middle: NaN,
  statistic: NaN,
  signalToNoise: NaN,
  fit: NaN,
  contrast: NaN,
  before: NaN,
  after: NaN,
  riseOverBefore: NaN,
  riseOverAfter: NaN,
  width: NaN,
  hindsight: NaN,
  roundness: NaN,
  loop: NaN,
  burst: NaN,
  company: NaN,
  phaseReturn: NaN,
  peakPower: NaN,
  sidePower: NaN,
  noisePower: NaN,
});

/** Mean phasor of a stretch, its power, and its noise's. */
interface Side {
  power: number;
  noise: number;
  re: number;
  im: number;
}

/** Room to work in: before and after, kept from one call to the next. */
const SIDES: readonly [Side, Side] = [
  { power: 0.5, noise: 0.5, re: 0.5, im: 0.5 },
  { power: 0.5, noise: 0.5, re: 0.5, im: 0.5 },
];

/** @param toIndex  the last that counts @returns `side`, filled; nothing but a trace of noise for less than three values */
function readSide(side: Side, view: ToneView, fromIndex: number, toIndex: number): Side {
  const from = Math.max(0, fromIndex);
  const to = Math.min(view.length, toIndex + 1);
  const n = to - from;
  const isThere = n >= 3;
  side.re = isThere ? stretchSum(view.sums.re, from, to) / n : 0;
  side.im = isThere ? stretchSum(view.sums.im, from, to) / n : 0;
  const density = isThere ? stretchSum(view.sums.noiseDensity, from, to) / n : 0;
  side.power = side.re * side.re + side.im * side.im;
  side.noise = density * meanBandwidthHz(view, n) + 1e-30;
  return side;
}

/**
 * Energy across the best line through the origin, as a share of all: the smaller eigenvalue of Σ (x, y)(x, y)ᵀ, less
 * the noise's share. An amplitude that changes, even through zero, stays on a line; a passage draws a circle.
 */
function roundness(view: ToneView, fromIndex: number, toIndex: number): number {
  let xx = 0;
  let yy = 0;
  let xy = 0;
  const from = Math.max(0, fromIndex);
  const to = Math.min(view.length, toIndex + 1);
  for (let k = from; k < to; k += 1) {
    const x = view.re[k];
    const y = view.im[k];
    xx += x * x;
    yy += y * y;
    xy += x * y;
  }
  const total = xx + yy;
  if (!(total > 0)) return 0;
  const noise = (stretchSum(view.sums.noiseDensity, from, to) * view.bandwidthHz) / 2;
  const half = (xx - yy) / 2;
  const smaller = total / 2 - Math.sqrt(half * half + xy * xy);
  return Math.max(0, smaller - noise) / total;
}

/**
 * Area of the smoothed path closed by its chord, over the area of a circle of the path's width, both seen from the
 * middle of the chord.
 */
function loopArea(view: ToneView, fromIndex: number, toIndex: number, half: number): number {
  const from = Math.max(0, fromIndex);
  const stride = Math.max(1, half >> 1);
  const points = Math.floor((Math.min(view.length - 1, toIndex) - from) / stride) + 1;
  if (points < 4) return 0;
  readPath(view, from, stride, points, half);
  const { re, im } = path;
  const last = points - 1;
  const baseRe = (re[0] + re[last]) / 2;
  const baseIm = (im[0] + im[last]) / 2;
  let area = 0;
  let width = 0;
  let previousRe = re[last] - baseRe;
  let previousIm = im[last] - baseIm;
  for (let i = 0; i < points; i += 1) {
    const x = re[i] - baseRe;
    const y = im[i] - baseIm;
    area += previousRe * y - previousIm * x;
    width = Math.max(width, x * x + y * y);
    previousRe = x;
    previousIm = y;
  }
  return width > 0 ? Math.min(1.5, Math.abs(area / 2) / ((Math.PI / 4) * width)) : 0;
}

/** Room to work in, kept from one call to the next. */
let path = { re: new Float64Array(512), im: new Float64Array(512) };

/** Fills `path` with smoothed values, every `stride`th from `from` on. */
function readPath(view: ToneView, from: number, stride: number, points: number, half: number): void {
  if (path.re.length < points) {
    path = { re: new Float64Array(2 * points), im: new Float64Array(2 * points) };
  }
  for (let i = 0; i < points; i += 1) {
    path.re[i] = smoothed(view, view.sums.re, from + i * stride, half);
    path.im[i] = smoothed(view, view.sums.im, from + i * stride, half);
  }
}

/** Mean of 2·half+1 values from their running sums. */
export function smoothed(view: ToneView, sums: Float64Array, index: number, half: number): number {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length, index + half + 1);
  return stretchSum(sums, from, to) / (to - from);
}

/** Mean from one index to another, both included, from running sums; 0 of none. */
function meanOver(sums: Float64Array, fromIndex: number, toIndex: number, length: number): number {
  const from = Math.max(0, fromIndex);
  const to = Math.min(length, toIndex + 1);
  return to > from ? stretchSum(sums, from, to) / (to - from) : 0;
}
