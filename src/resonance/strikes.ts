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

/**
 * Strikes onto a fork that still sounds: the phasor jumps, and the power after the jump stays above all that was
 * before it. A passage falls again, a knock is gone, an approach takes longer.
 * @param from  first value looked at, index into the view; `to`: one past the last
 * @returns indices into the view, ascending
 */
export function findStrikes(view: ToneView, from: number, to: number): number[] {
  const sums = new RunningSums(view, from, to);
  const ms = view.rateHz / 1000;
  const [near, edge, far] = [Math.round(20 * ms), Math.round(40 * ms), Math.round(100 * ms)];
  const [long, third] = [Math.round(240 * ms), Math.round(80 * ms)];
  const jumpAt = (i: number): number =>
    distance(sums.mean(i + near, i + edge), sums.mean(i - edge, i - near));
  const strikes: number[] = [];
  for (let i = from + long + edge; i < to - long - edge; i += 1) {
    const jump = jumpAt(i);
    if (jumpAt(i - 1) > jump || jumpAt(i + 1) >= jump) continue;
    const step = distance(sums.mean(i + far, i + long), sums.mean(i - long, i - far));
    if (!(jump >= SHARPEST[0] * step && jump <= SHARPEST[1] * step)) continue;
    const bandwidthHz = Math.min(view.bandwidthHz, view.rateHz / (edge - near + 1));
    if (Math.sqrt((view.noiseDensity[i] as number) * bandwidthHz) > MOST_NOISE * step) continue;
    let [before, after] = [0, Infinity];
    for (let k = 0; k < 3; k += 1) {
      before = Math.max(before, sums.power(i - edge - (k + 1) * third, i - edge - k * third));
      after = Math.min(after, sums.power(i + edge + k * third, i + edge + (k + 1) * third));
    }
    if (after < LASTING * before) continue;
    const last = strikes[strikes.length - 1];
    if (last === undefined || i - last > APART_S * view.rateHz) strikes.push(i);
  }
  return strikes;
}

const distance = (a: readonly [number, number], b: readonly [number, number]): number =>
  Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Means over any stretch of the view in constant time. */
class RunningSums {
  readonly #from: number;
  readonly #length: number;
  readonly #re: Float64Array;
  readonly #im: Float64Array;
  readonly #squares: Float64Array;

  constructor(view: ToneView, from: number, to: number) {
    this.#from = from;
    this.#length = to - from;
    this.#re = new Float64Array(this.#length + 1);
    this.#im = new Float64Array(this.#length + 1);
    this.#squares = new Float64Array(this.#length + 1);
    for (let i = 0; i < this.#length; i += 1) {
      const x = view.re[from + i] as number;
      const y = view.im[from + i] as number;
      this.#re[i + 1] = (this.#re[i] as number) + x;
      this.#im[i + 1] = (this.#im[i] as number) + y;
      this.#squares[i + 1] = (this.#squares[i] as number) + x * x + y * y;
    }
  }

  /** Mean phasor from one index to another, both included. */
  mean(from: number, to: number): [number, number] {
    return [this.#over(this.#re, from, to), this.#over(this.#im, from, to)];
  }

  power(from: number, to: number): number {
    return this.#over(this.#squares, from, to);
  }

  #over(sums: Float64Array, from: number, to: number): number {
    const a = Math.max(0, from - this.#from);
    const b = Math.min(this.#length, to + 1 - this.#from);
    return b > a ? ((sums[b] as number) - (sums[a] as number)) / (b - a) : 0;
  }
}
