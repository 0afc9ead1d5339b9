import { quickselect } from '../../numeric/quickselect.ts';
import { rangeSum } from '../../numeric/prefixSum.ts';
import { coherentPower, meanPower } from '../tonePower.ts';
import type { ToneView } from '../toneView.ts';

/** How a peak stands among the levels beside it; natural logarithms of powers. */
export interface StandingOut {
  /**
   * Topographic prominence: ln of the peak over the lowest level on the way to a higher one, the nearer of both sides'
   * falls. A second maximum of a wobbling hand stands hardly out of the first.
   */
  readonly prominence: number;
  /** ln of the highest level within BESIDE_S on either side over the peak; below 0 where the peak is the highest. */
  readonly higherBeside: number;
}

/** How the level goes in the seconds around a passage, the passage itself left out; natural logarithms of powers. */
export interface LevelsAround {
  /** ln of the peak over the middle level around it. */
  readonly peakOverUsual: number;
  /** ln of the levels' upper quartile over their lower one: how unsteady hand, room and company are. */
  readonly unsteadiness: number;
}

/** The sharpest lasting rise of the level before a peak: a strike, or a fork that is put to the mouth. */
export interface Onset {
  /** ln of the power after it over the power before it, each the nearer of two stretches; at least 0. */
  readonly onset: number;
  /** ln of the time from it to the peak, s. */
  readonly sinceOnset: number;
}

/** How much of the tone on either side tells whether it is steady, s. */
export const STEADY_S = 0.8;
/** How far on either side a higher maximum is looked for, s. */
const BESIDE_S = 1.5;
/** What is nearer than this belongs to the peak itself, s. */
const AWAY_S = 0.15;
/** Half of the values that are averaged for the level beside the peak. */
const BESIDE_HALF = 4;

/** How far on either side the usual level is taken, s. */
const AROUND_S = 4;
const AROUND_STEP = 16;
/** Fewer levels tell nothing. */
const LEAST_LEVELS = 8;

/** An onset is looked for so long before a peak, and not nearer than this, s: nearer it is the peak's own rise. */
const ONSET_S = 1.6;
const ONSET_AWAY_S = 0.15;
/** Stretches that are compared: 70 ms each, two on either side of a gap of 40 ms. */
const ONSET_HALF_S = 0.03;
const ONSET_NEAR_S = 0.05;
const ONSET_FAR_S = 0.11;
const ONSET_STEP = 3;

/** ln of the power that keeps its phase over the power that doesn't; 0 where there is nothing to hear. */
export function steadiness(view: ToneView, fromIndex: number, toIndex: number): number {
  const from = Math.max(0, Math.round(fromIndex));
  const to = Math.min(view.length, Math.round(toIndex) + 1);
  const n = to - from;
  if (n < 3) return 0;
  const re = rangeSum(view.sums.re, from, to) / n;
  const im = rangeSum(view.sums.im, from, to) / n;
  const coherent = re * re + im * im;
  const rest = Math.max(0, meanPower(view, from, to) - coherent);
  return Math.log((coherent + 1e-30) / (rest + 0.001 * coherent + 1e-30));
}

/** How the peak stands among the levels beside it. */
export function standingOut(
  view: ToneView,
  peakIndex: number,
  peakPower: number,
  lastIndex: number,
): StandingOut {
  const reach = Math.round(BESIDE_S * view.rateHz);
  const away = Math.round(AWAY_S * view.rateHz);
  let highest = 0;
  let prominence = Infinity;
  for (let direction = -1; direction <= 1; direction += 2) {
    let lowest = peakPower;
    let isBelow = true;
    for (let step = BESIDE_HALF; step <= reach; step += BESIDE_HALF) {
      const k = peakIndex + direction * step;
      if (k < 0 || k > lastIndex) break;
      const power = coherentPower(view, k, Math.min(BESIDE_HALF, lastIndex - k));
      if (step >= away) {
        highest = Math.max(highest, power);
        isBelow &&= power <= peakPower;
      }
      if (isBelow) lowest = Math.min(lowest, power);
    }
    prominence = Math.min(prominence, Math.log(peakPower / Math.max(lowest, 1e-4 * peakPower)));
  }
  return { prominence, higherBeside: Math.log((highest + 1e-30) / peakPower) };
}

/**
 * The levels around a passage. Both are 0 where too little is there.
 * @param halfWidth  of the passage, in values
 */
export function levelsAround(
  view: ToneView,
  peak: { readonly index: number; readonly power: number },
  halfWidth: number,
  lastIndex: number,
): LevelsAround {
  const reach = Math.round(AROUND_S * view.rateHz);
  const own = Math.round(2.5 * halfWidth + 0.1 * view.rateHz);
  const levels = new Float64Array(Math.floor((2 * reach) / AROUND_STEP) + 2);
  let count = 0;
  const from = Math.max(0, peak.index - reach);
  const to = Math.min(lastIndex - BESIDE_HALF, peak.index + reach);
  for (let k = from; k <= to; k += AROUND_STEP) {
    if (Math.abs(k - peak.index) <= own) continue;
    levels[count] = coherentPower(view, k, BESIDE_HALF);
    count += 1;
  }
  if (count < LEAST_LEVELS) return { peakOverUsual: 0, unsteadiness: 0 };
  const [lower, middle, upper] = [0.25, 0.5, 0.75].map((share) =>
    quickselect(levels, Math.floor(share * count), count),
  );
  return {
    peakOverUsual: Math.log(peak.power / (middle + 1e-30)),
    unsteadiness: Math.log((upper + 1e-30) / (lower + 1e-30)),
  };
}

/** The onset before a peak; 0 and the earliest time where nothing rises. */
export function onsetBefore(view: ToneView, peakIndex: number): Onset {
  const rate = view.rateHz;
  const [half, near, far] = [ONSET_HALF_S, ONSET_NEAR_S, ONSET_FAR_S].map((s) => Math.round(s * rate));
  let highest = 1;
  let at = peakIndex - ONSET_S * rate;
  const first = Math.max(far + half, Math.round(at));
  const last = Math.min(view.length - 1 - far - half, Math.round(peakIndex - ONSET_AWAY_S * rate));
  for (let k = first; k <= last; k += ONSET_STEP) {
    let before = coherentPower(view, k - near, half) + 1e-30;
    let after = coherentPower(view, k + near, half) + 1e-30;
    // Mostly the near stretches alone tell that it is no higher.
    if (after <= highest * before) continue;
    before = Math.max(before, coherentPower(view, k - far, half) + 1e-30);
    after = Math.min(after, coherentPower(view, k + far, half) + 1e-30);
    if (after <= highest * before) continue;
    highest = after / before;
    at = k;
  }
  return { onset: Math.log(highest), sinceOnset: Math.log((peakIndex - at) / rate) };
}
