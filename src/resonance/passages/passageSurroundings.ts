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

/** How much of the tone on either side tells whether it is steady, s. */
export const STEADY_S = 0.8;
/** How far on either side a higher maximum is looked for, s. */
const BESIDE_S = 1.5;
/** What is nearer than this belongs to the peak itself, s. */
const AWAY_S = 0.15;
/** Half of the values that are averaged for the level beside the peak. */
const BESIDE_HALF = 4;

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
