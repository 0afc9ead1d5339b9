import { rangeSum } from '../../numeric/prefixSum.ts';
import { meanBandwidthHz, smoothedPhasor, smoothedPower } from '../tonePower.ts';
import type { ToneView } from '../toneView.ts';
import type { TemplateMatch } from './matchedFilter.ts';
import { levelsAround, onsetBefore, standingOut, steadiness, STEADY_S } from './passageSurroundings.ts';
import type { LevelsAround, Onset, StandingOut } from './passageSurroundings.ts';
import { phasorPath } from './phasorPath.ts';
import { playedNote } from './playedNote.ts';
import type { PlayedNote } from './playedNote.ts';

/**
 * What speaks for or against a passage, each a physical quantity. Logarithms of powers are natural, so that a step
 * of 1 is 4.3 dB.
 */
export interface PassageFeatures extends StandingOut, LevelsAround, Onset, PlayedNote {
  /** When the level peaked, index into the view. */
  readonly peakIndex: number;
  /** Middle of the matched shape, index into the view. */
  readonly middle: number;
  /** ln of the match's statistic. */
  readonly statistic: number;
  /** ln of the shape's energy over the noise of one value. */
  readonly signalToNoise: number;
  /** ln of the shape's energy over what the fit leaves. */
  readonly goodnessOfFit: number;
  /** ln of the shape's energy over what it explains turning the other way: about 0 where only an amplitude changed. */
  readonly handedness: number;
  /** Peak-to-background ratio: ln of the statistic over what the same template reaches by chance around here. */
  readonly peakToBackground: number;
  /** ln(1 + tone power / noise power) before the passage, the tone averaged in phase; 0 where no fork sounds. */
  readonly toneBefore: number;
  /** The same after it. */
  readonly toneAfter: number;
  /** ln of the peak's power over the power before it; at most the distance to the noise. */
  readonly riseOverBefore: number;
  readonly riseOverAfter: number;
  /** ln of the half width in s. */
  readonly logHalfWidth: number;
  /** ln of the time that was waited after the middle, in half widths. */
  readonly lookAhead: number;
  /**
   * Energy off the line through the origin as a share of the whole, 0..0.5: what no amplitude change can give. It is
   * (1 − |ρ|) / 2, ρ the circularity quotient (Ollila 2008, IEEE Signal Process. Lett. 15, 841).
   */
  readonly circularity: number;
  /**
   * Area that the phasor's path encloses, over that of a full circle as wide as the path, 0..1.5: about 1 for a passage
   * at whatever speed, 0 for a fork that comes and goes (a straight path out and back).
   */
  readonly enclosedArea: number;
  /** Noise-burst ratio: ln of the side bands' density during the passage over that around it. */
  readonly noiseBurstRatio: number;
  /**
   * Harmonic-neighbour ratio: ln of the power in the far side bands (460 Hz in all) over the peak's. A voice's harmonic
   * has neighbours, a fork none.
   */
  readonly harmonicNeighbourRatio: number;
  /** cos of the phase step from before to after: the circle returns to where it began. */
  readonly phaseReturn: number;
  /**
   * Steadiness of the tone in STEADY_S before the passage: ln of the power that keeps its phase over the power that
   * doesn't. A fork stands still, a voice or a note glides.
   */
  readonly steadyBefore: number;
  /** The same after it, as far as may be heard. */
  readonly steadyAfter: number;
  /** ln of the far side bands' power over the peak's, in the six seconds around: whether anyone talks. */
  readonly talkAround: number;
  /** The phasor's way past the resonance, see `phasorPath`: PATH_LENGTH numbers. */
  readonly path: readonly number[];
  /** Smoothed powers (mean |tone|², noise off): at the peak, and the mean of before and after. */
  readonly peakPower: number;
  readonly sidePower: number;
  /** Noise mean square in the smoothed power's band. */
  readonly noisePower: number;
}

/** Bandwidth of both far side bands together, 70–300 Hz on either side, Hz. */
const FAR_BANDS_HZ = 460;

/** Half of the values that are averaged to follow a passage of this half width (in values). */
export const smoothingHalf = (halfWidth: number): number =>
  Math.max(2, Math.min(15, Math.round(0.25 * halfWidth)));

/**
 * Features of one match, from all that stands before and after it in the view.
 * @param lastIndex  last index that may be used (an online detector's ends at the present)
 */
export function passageFeatures(view: ToneView, match: TemplateMatch, lastIndex: number): PassageFeatures {
  const rate = view.rateHz;
  const { middle } = match;
  const { shape, after: afterCells, step } = match.template;
  const w = shape.halfWidthS * rate;
  const half = smoothingHalf(w);
  const top = levelMaximum(view, middle, w, lastIndex);
  const gap = 1.8 * w + 0.03 * rate;
  const span = Math.max(0.12 * rate, 2.5 * w);
  const before = readSide(view, middle - gap - span, middle - gap);
  const afterFrom = Math.min(middle + gap, lastIndex - 0.1 * rate);
  const after = readSide(view, afterFrom, Math.min(middle + gap + span, lastIndex));
  const noisePower = view.noiseDensity[top.index] * meanBandwidthHz(view, 2 * half + 1) + 1e-30;
  const peakPower = Math.max(top.power, noisePower);
  const beforePower = Math.max(before.power - before.noise, 0);
  const afterPower = Math.max(after.power - after.noise, 0);
  /** The view within so many values of the middle. */
  const within = (reach: number) => ({
    from: Math.round(middle - reach),
    to: Math.min(lastIndex, Math.round(middle + reach)),
  });
  const core = { from: Math.round(middle - w), to: Math.round(Math.min(lastIndex, middle + w)) };
  const around = {
    from: Math.round(middle - 3 * rate),
    to: Math.round(Math.min(lastIndex, middle + 3 * rate)),
  };
  const coreDensity = meanOver(view.sums.noiseDensity, core, view.length);
  const aroundDensity = meanOver(view.sums.noiseDensity, around, view.length);
  const farDensity = meanOver(view.sums.farDensity, core, view.length);
  const farAround = meanOver(view.sums.farDensity, around, view.length);
  const standing = standingOut(view, top.index, peakPower, lastIndex);
  const both = Math.sqrt(before.power * after.power);
  return {
    peakIndex: top.index,
    middle,
    statistic: Math.log(match.statistic),
    signalToNoise: Math.log((match.explained + 1e-30) / (match.noiseMeanSquare + 1e-30)),
    goodnessOfFit: Math.log((match.explained + 1e-30) / (match.residual + 1e-30)),
    handedness: Math.log((match.explained + 1e-30) / (match.opposite + match.noiseMeanSquare + 1e-30)),
    peakToBackground: Math.log(match.statistic / (1 + match.background)),
    toneBefore: Math.log(1 + before.power / before.noise),
    toneAfter: Math.log(1 + after.power / after.noise),
    riseOverBefore: Math.log(peakPower / Math.max(beforePower, noisePower)),
    riseOverAfter: Math.log(peakPower / Math.max(afterPower, noisePower)),
    logHalfWidth: Math.log(shape.halfWidthS),
    lookAhead: Math.log((afterCells * step) / w),
    circularity: circularity(view, within(2.5 * w)),
    enclosedArea: enclosedArea(view, within(3 * w), half),
    noiseBurstRatio: Math.log((coreDensity + 1e-30) / (aroundDensity + 1e-30)),
    harmonicNeighbourRatio: Math.log((FAR_BANDS_HZ * farDensity + 1e-30) / peakPower),
    phaseReturn: both > 0 ? (before.re * after.re + before.im * after.im) / both : 0,
    steadyBefore: steadiness(view, middle - gap - STEADY_S * rate, middle - gap),
    steadyAfter: steadiness(view, afterFrom, Math.min(lastIndex, middle + gap + STEADY_S * rate)),
    prominence: standing.prominence,
    higherBeside: standing.higherBeside,
    ...onsetBefore(view, top.index),
    ...playedNote(view, { peakIndex: top.index, middle, halfWidth: w, gap, lastIndex }),
    ...levelsAround(view, { index: top.index, power: peakPower }, w, lastIndex),
    path: phasorPath(view, {
      middle,
      peakIndex: top.index,
      halfWidth: w,
      direction: match.direction,
      smoothingHalf: half,
      lastIndex,
      direct: meanPhasor([before, after]),
    }),
    talkAround: Math.log((FAR_BANDS_HZ * farAround + 1e-30) / peakPower),
    peakPower,
    sidePower: (beforePower + afterPower) / 2,
    noisePower,
  };
}

/** Indices into the view, both included; they may reach beyond it. */
interface Range {
  readonly from: number;
  readonly to: number;
}

/** The level's own maximum near the middle of the shape. @param w  half width, in values */
function levelMaximum(
  view: ToneView,
  middle: number,
  w: number,
  lastIndex: number,
): { readonly index: number; readonly power: number } {
  const half = smoothingHalf(w);
  const reach = Math.round(w + 0.08 * view.rateHz);
  const first = Math.max(0, Math.round(middle) - reach);
  const last = Math.min(lastIndex, Math.round(middle) + reach);
  let index = first;
  let power = -Infinity;
  for (let k = first; k <= last; k += 1) {
    const here = smoothedPower(view, k, Math.min(half, lastIndex - k + half));
    if (here > power) {
      power = here;
      index = k;
    }
  }
  return { index, power };
}

/** Mean phasor of a stretch, its power, and its noise's. */
interface Side {
  /** Whether there was enough to hear. */
  readonly isHeard: boolean;
  readonly power: number;
  readonly noise: number;
  readonly re: number;
  readonly im: number;
}

/** @param toIndex  the last that counts @returns nothing but a trace of noise for less than three values */
function readSide(view: ToneView, fromIndex: number, toIndex: number): Side {
  const from = Math.max(0, Math.round(fromIndex));
  const to = Math.min(view.length, Math.round(toIndex) + 1);
  const n = to - from;
  if (n < 3) return { isHeard: false, power: 0, noise: 1e-30, re: 0, im: 0 };
  const re = rangeSum(view.sums.re, from, to) / n;
  const im = rangeSum(view.sums.im, from, to) / n;
  const density = rangeSum(view.sums.noiseDensity, from, to) / n;
  return {
    isHeard: true,
    power: re * re + im * im,
    noise: density * meanBandwidthHz(view, n) + 1e-30,
    re,
    im,
  };
}

/** The mean of the sides that are heard; 0 where none is. */
function meanPhasor(sides: readonly Side[]): { re: number; im: number } {
  const heard = sides.filter(({ isHeard }) => isHeard);
  const n = Math.max(1, heard.length);
  return {
    re: heard.reduce((sum, { re }) => sum + re, 0) / n,
    im: heard.reduce((sum, { im }) => sum + im, 0) / n,
  };
}

/**
 * Energy across the best line through the origin, as a share of all: the smaller eigenvalue of Σ (x, y)(x, y)ᵀ, less
 * the noise's share. An amplitude that changes, even through zero, stays on a line; a passage draws a circle.
 */
function circularity(view: ToneView, range: Range): number {
  let xx = 0;
  let yy = 0;
  let xy = 0;
  const from = Math.max(0, range.from);
  const to = Math.min(view.length, range.to + 1);
  for (let k = from; k < to; k += 1) {
    const x = view.re[k];
    const y = view.im[k];
    xx += x * x;
    yy += y * y;
    xy += x * y;
  }
  const total = xx + yy;
  if (!(total > 0)) return 0;
  const noise = (rangeSum(view.sums.noiseDensity, from, to) * view.bandwidthHz) / 2;
  const half = (xx - yy) / 2;
  const smaller = total / 2 - Math.sqrt(half * half + xy * xy);
  return Math.max(0, smaller - noise) / total;
}

/**
 * Area of the smoothed path closed by its chord, over the area of a circle of the path's width, both seen from the
 * middle of the chord.
 */
function enclosedArea(view: ToneView, range: Range, half: number): number {
  const from = Math.max(0, range.from);
  const stride = Math.max(1, half >> 1);
  const points = Math.floor((Math.min(view.length - 1, range.to) - from) / stride) + 1;
  if (points < 4) return 0;
  const first = smoothedPhasor(view, from, half);
  const last = smoothedPhasor(view, from + (points - 1) * stride, half);
  const baseRe = (first.re + last.re) / 2;
  const baseIm = (first.im + last.im) / 2;
  let area = 0;
  let width = 0;
  let previousRe = last.re - baseRe;
  let previousIm = last.im - baseIm;
  for (let i = 0; i < points; i += 1) {
    const { re, im } = smoothedPhasor(view, from + i * stride, half);
    const x = re - baseRe;
    const y = im - baseIm;
    area += previousRe * y - previousIm * x;
    width = Math.max(width, x * x + y * y);
    previousRe = x;
    previousIm = y;
  }
  return width > 0 ? Math.min(1.5, Math.abs(area / 2) / ((Math.PI / 4) * width)) : 0;
}

/** Mean of the values in a range from their prefix sums; 0 of none. @param length  of the values */
function meanOver(sums: Float64Array, range: Range, length: number): number {
  const from = Math.max(0, range.from);
  const to = Math.min(length, range.to + 1);
  return to > from ? rangeSum(sums, from, to) / (to - from) : 0;
}
