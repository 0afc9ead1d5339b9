import { rangeSum } from '../numeric/prefixSum.ts';
import { meanPower } from './tonePower.ts';
import type { ToneView } from './toneView.ts';

/** Least lasting rise of the power that a strike makes. */
const LASTING = 2;
/**
 * Least and most share of a step that happens within the 60 ms around it: about 1 for a strike, whose 2 ms the narrow
 * stream smears over 30; below 0.6 for a fork that is brought to the mouth, at best in 0.2 s; more than 1 for a burst
 * that is gone again.
 */
const SHARPEST: readonly [number, number] = [0.7, 1.5];
/** Most noise amplitude in the values compared, as a share of the step. */
const MOST_NOISE = 0.25;
/** No two strikes within this time, s. */
const APART_S = 0.4;

/** Distances from a jump, in values: what is compared to tell it. */
interface Reach {
  readonly near: number;
  readonly edge: number;
  readonly far: number;
  readonly long: number;
  readonly third: number;
}

function reachAt(rateHz: number): Reach {
  const values = (ms: number): number => Math.round((ms * rateHz) / 1000);
  return { near: values(20), edge: values(40), far: values(100), long: values(240), third: values(80) };
}

/**
 * Onsets of strikes onto a fork that still sounds: the phasor jumps, and the power after the jump stays above all that
 * was before it. A passage falls again, a knock is gone, an approach takes longer.
 * @param from  first value searched, index into the view; `to`: one past the last
 * @returns indices into the view, ascending
 */
export function findStrikes(view: ToneView, from: number, to: number): readonly number[] {
  const reach = reachAt(view.rateHz);
  const { near, edge, long } = reach;
  const first = from + long + edge;
  const end = to - long - edge;
  const strikes: number[] = [];
  if (end <= first) return strikes;
  let last = -Infinity;
  let before = jumpPower(view, first - 1, near, edge);
  let here = jumpPower(view, first, near, edge);
  for (let i = first; i < end; i += 1) {
    const after = jumpPower(view, i + 1, near, edge);
    const isHighest = here >= before && here > after;
    if (isHighest && isStrike(view, i, here, reach) && i - last > APART_S * view.rateHz) {
      strikes.push(i);
      last = i;
    }
    before = here;
    here = after;
  }
  return strikes;
}

/** @param jump  squared jump at the index, which is higher than beside it */
function isStrike(view: ToneView, i: number, jump: number, reach: Reach): boolean {
  const { near, edge, far, long, third } = reach;
  const step = jumpPower(view, i, far, long);
  if (!(jump >= SHARPEST[0] ** 2 * step && jump <= SHARPEST[1] ** 2 * step)) return false;
  const bandwidthHz = Math.min(view.bandwidthHz, view.rateHz / (edge - near + 1));
  if (view.noiseDensity[i] * bandwidthHz > MOST_NOISE ** 2 * step) return false;
  let before = 0;
  let after = Infinity;
  for (let k = 0; k < 3; k += 1) {
    before = Math.max(before, meanPower(view, i - edge - (k + 1) * third, i - edge - k * third + 1));
    after = Math.min(after, meanPower(view, i + edge + k * third, i + edge + (k + 1) * third + 1));
  }
  return after >= LASTING * before;
}

/** |mean of the values `near` to `far` after an index, less the mean of those as far before it|². */
function jumpPower({ sums }: ToneView, i: number, near: number, far: number): number {
  const n = far - near + 1;
  const x = rangeSum(sums.re, i + near, i + far + 1) - rangeSum(sums.re, i - far, i - near + 1);
  const y = rangeSum(sums.im, i + near, i + far + 1) - rangeSum(sums.im, i - far, i - near + 1);
  return (x * x + y * y) / (n * n);
}
