import { meanPower, stretchSum } from './toneView.ts';
import type { ToneView } from './toneView.ts';
import { NOTHING, withOne } from './shortList.ts';

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
  readonly rateHz: number;
  readonly near: number;
  readonly edge: number;
  readonly far: number;
  readonly long: number;
  readonly third: number;
}

let lastReach: Reach = { rateHz: 0, near: 0, edge: 0, far: 0, long: 0, third: 0 };

function reachAt(rateHz: number): Reach {
  if (lastReach.rateHz !== rateHz) lastReach = newReach(rateHz);
  return lastReach;
}

function newReach(rateHz: number): Reach {
  const values = (ms: number): number => Math.round((ms * rateHz) / 1000);
  return {
    rateHz,
    near: values(20),
    edge: values(40),
    far: values(100),
    long: values(240),
    third: values(80),
  };
}

/** Room to work in, kept from one call to the next. */
let jumps = new Float64Array(1024);

/**
 * Strikes onto a fork that still sounds: the phasor jumps, and the power after the jump stays above all that was
 * before it. A passage falls again, a knock is gone, an approach takes longer.
 * @param from  first value looked at, index into the view; `to`: one past the last
 * @returns indices into the view, ascending
 */
export function findStrikes(view: ToneView, from: number, to: number): readonly number[] {
  const reach = reachAt(view.rateHz);
  const { near, edge, long } = reach;
  const first = from + long + edge;
  const end = to - long - edge;
  if (end <= first) return NOTHING;
  let strikes: number[] | null = null;
  let last = -Infinity;
  readJumps(view, first - 1, end + 1, near, edge);
  for (let i = first; i < end; i += 1) {
    const at = i - first + 1;
    const here = jumps[at];
    if (here < jumps[at - 1] || here <= jumps[at + 1]) continue;
    if (!isStrike(view, i, at, reach)) continue;
    if (i - last <= APART_S * view.rateHz) continue;
    strikes = withOne(strikes, i);
    last = i;
  }
  return strikes ?? NOTHING;
}

/** @param at  place in `jumps` of the squared jump at the index, which is higher than beside it */
function isStrike(view: ToneView, i: number, at: number, reach: Reach): boolean {
  const jump = jumps[at];
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

/** Fills `jumps` with the jump powers at the indices [from, to), the first at 0. */
function readJumps(view: ToneView, from: number, to: number, near: number, far: number): void {
  if (jumps.length < to - from) jumps = new Float64Array(2 * (to - from));
  const { re, im } = view.sums;
  const n2 = (far - near + 1) ** 2;
  for (let i = from; i < to; i += 1) {
    // Plain sums: a function called here would box each number that it gives back.
    const x = re[i + far + 1] - re[i + near] - re[i - near + 1] + re[i - far];
    const y = im[i + far + 1] - im[i + near] - im[i - near + 1] + im[i - far];
    jumps[i - from] = (x * x + y * y) / n2;
  }
}

/** |mean of the values `near` to `far` after an index, less the mean of those as far before it|². */
function jumpPower({ sums }: ToneView, i: number, near: number, far: number): number {
  const n = far - near + 1;
  const x = stretchSum(sums.re, i + near, i + far + 1) - stretchSum(sums.re, i - far, i - near + 1);
  const y = stretchSum(sums.im, i + near, i + far + 1) - stretchSum(sums.im, i - far, i - near + 1);
  return (x * x + y * y) / (n * n);
}
