import type { ToneView } from './toneView.ts';

/** How far the tone must fall at a turn, against the weaker side, as a ratio of powers; and most between the sides. */
const FALL = 15;
const SIDES = 10;
/** Tone over noise on the weaker side, as a ratio of powers. */
const CLEAR = 30;
/** cos of the phase step across the turn: a sign flip is −1. */
const FLIP = -0.8;
/** Where the tone is compared with that before and after a turn, how much is averaged there and at the turn itself, s. */
const SIDE_S = 0.2;
const SIDE_HALF_S = 0.06;
const MIDDLE_HALF_S = 0.02;
const APART_S = 0.3;

/**
 * Moments at which the tone went through nothing and came back upside down: the silent directions of a fork that is
 * turned about its stem. A fork is a quadrupole; its sign flips across each of them.
 * @param from  first value searched, index into the view; `to`: one past the last
 * @returns indices into the view, ascending, at least 0.3 s apart
 */
export function findTurns(view: ToneView, from: number, to: number): number[] {
  const { rateHz } = view;
  const side = Math.round(SIDE_S * rateHz);
  const sideHalf = Math.round(SIDE_HALF_S * rateHz);
  const middleHalf = Math.round(MIDDLE_HALF_S * rateHz);
  const turns: number[] = [];
  for (let k = from + side + sideHalf; k < to - side - sideHalf; k += 2) {
    const a = meanPhasor(view, k - side, sideHalf);
    const b = meanPhasor(view, k + side, sideHalf);
    const c = meanPhasor(view, k, middleHalf);
    const before = a.re * a.re + a.im * a.im;
    const after = b.re * b.re + b.im * b.im;
    const weaker = Math.min(before, after);
    if (weaker < FALL * (c.re * c.re + c.im * c.im) || Math.max(before, after) > SIDES * weaker) continue;
    if (a.re * b.re + a.im * b.im > FLIP * Math.sqrt(before * after)) continue;
    if (weaker < CLEAR * view.noiseDensity[k] * (rateHz / (2 * sideHalf + 1))) continue;
    const last = turns.at(-1);
    if (last === undefined || k - last > APART_S * rateHz) turns.push(k);
  }
  return turns;
}

function meanPhasor({ re, im }: ToneView, middle: number, half: number): { re: number; im: number } {
  let [x, y] = [0, 0];
  for (let k = middle - half; k <= middle + half; k += 1) {
    x += re[k];
    y += im[k];
  }
  return { re: x / (2 * half + 1), im: y / (2 * half + 1) };
}
