import { rangeSum } from '../../numeric/prefixSum.ts';
import { coherentPower } from '../tonePower.ts';
import type { ToneView } from '../toneView.ts';

/**
 * What a note that is played or sung has, and a fork that sounds all the while has not: an attack of its own, a burst
 * beside it, and a frequency beside the fork's. Natural logarithms of powers.
 */
export interface PlayedNote {
  /** Sharpest rise of the level up to the peak, ln of the power over that of 60 ms before. */
  readonly attack: number;
  /** Sharpest fall after it, the same way. */
  readonly release: number;
  /** Sharpest rise of the far side bands about the peak, ln of 160 ms over the 160 ms before: a string that is plucked. */
  readonly burst: number;
  /** ln of how far the tone before the passage is off the fork's frequency, Hz, at least OFF_FLOOR_HZ. */
  readonly offBefore: number;
  /** The same after it. */
  readonly offAfter: number;
}

/** From the peak, s: a passage itself takes this time and half its width. */
const EDGE_S = 0.3;
/** Half of the time between the stretches that are compared, and half of their length, in values of 10 ms. */
const EDGE_LAG = 3;
const EDGE_HALF = 2;
const BURST_BEFORE_S = 0.5;
const BURST_AFTER_S = 0.2;
const BURST_LENGTH = 16;
const BURST_STEP = 4;
/** How much of the tone on either side tells its frequency, s. */
const BESIDE_S = 0.8;
/** Values between those whose phases are compared. */
const LAG = 5;
/** Fewer values tell no frequency. */
const LEAST_VALUES = 12;
/** Nobody hears a frequency better in that time amid noise, Hz. */
const OFF_FLOOR_HZ = 0.05;

/** Where a passage stands in its view, in values. */
export interface PassagePlace {
  readonly peakIndex: number;
  /** Middle of the shape. */
  readonly middle: number;
  readonly halfWidth: number;
  /** Where the tone beside it begins, from the middle. */
  readonly gap: number;
  /** Last index that may be used. */
  readonly lastIndex: number;
}

export function playedNote(view: ToneView, place: PassagePlace): PlayedNote {
  const { middle, gap, lastIndex } = place;
  const span = BESIDE_S * view.rateHz;
  const afterFrom = Math.min(middle + gap, lastIndex - 0.1 * view.rateHz);
  return {
    ...edges(view, place),
    burst: burst(view, place),
    offBefore: Math.log(OFF_FLOOR_HZ + Math.abs(offsetHz(view, middle - gap - span, middle - gap))),
    offAfter: Math.log(
      OFF_FLOOR_HZ + Math.abs(offsetHz(view, afterFrom, Math.min(lastIndex, afterFrom + span))),
    ),
  };
}

function edges(view: ToneView, place: PassagePlace): Pick<PlayedNote, 'attack' | 'release'> {
  const { peakIndex, lastIndex } = place;
  const reach = Math.round(EDGE_S * view.rateHz + place.halfWidth);
  const least = EDGE_LAG + EDGE_HALF;
  const from = Math.max(least, peakIndex - reach);
  const to = Math.min(lastIndex - least, peakIndex + reach);
  let attack = 0;
  let release = 0;
  for (let k = from; k <= to; k += EDGE_HALF) {
    const before = coherentPower(view, k - EDGE_LAG, EDGE_HALF) + 1e-30;
    const after = coherentPower(view, k + EDGE_LAG, EDGE_HALF) + 1e-30;
    const rise = Math.log(after / before);
    if (k <= peakIndex) attack = Math.max(attack, rise);
    else release = Math.max(release, -rise);
  }
  return { attack, release };
}

function burst(view: ToneView, { peakIndex, lastIndex }: PassagePlace): number {
  const sums = view.sums.farDensity;
  const from = Math.max(BURST_LENGTH, Math.round(peakIndex - BURST_BEFORE_S * view.rateHz));
  const to = Math.min(lastIndex - BURST_LENGTH, peakIndex + BURST_AFTER_S * view.rateHz);
  let highest = 0;
  for (let k = from; k <= to; k += BURST_STEP) {
    const before = rangeSum(sums, k - BURST_LENGTH, k) + 1e-30;
    const after = rangeSum(sums, k, k + BURST_LENGTH) + 1e-30;
    highest = Math.max(highest, Math.log(after / before));
  }
  return highest;
}

/**
 * How far a stretch of the tone is off the view's frequency, Hz; 0 where it is too short. The phase of the
 * autocorrelation at one lag (pulse-pair estimator: Miller & Rochwarger 1972, IEEE Trans. Inf. Theory 18, 380).
 */
function offsetHz(view: ToneView, fromIndex: number, toIndex: number): number {
  const from = Math.max(0, Math.round(fromIndex));
  const to = Math.min(view.length, Math.round(toIndex) + 1);
  if (to - from < LEAST_VALUES) return 0;
  let re = 0;
  let im = 0;
  for (let k = from; k + LAG < to; k += 1) {
    re += view.re[k + LAG] * view.re[k] + view.im[k + LAG] * view.im[k];
    im += view.im[k + LAG] * view.re[k] - view.re[k + LAG] * view.im[k];
  }
  return (Math.atan2(im, re) / (2 * Math.PI * LAG)) * view.rateHz;
}
