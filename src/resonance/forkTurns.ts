import type { ToneView } from './toneView.ts';

/** How far the tone must fall at a turn, against the weaker side, as a ratio of powers; and most between the sides. */
const FALL = 15;
const SIDES = 10;
/** Tone over noise on the weaker side, as a ratio of powers. */
const CLEAR = 30;
/** cos of the phase step across the turn: a sign flip is −1. */
const FLIP = -0.8;

/**
 * Moments at which the tone went through nothing and came back upside down: the silent directions of a fork that is
 * turned about its stem. A fork is a quadrupole; its sign flips across each of them.
 * @param from  first value looked at, index into the view; `to`: one past the last
 * @returns indices into the view, ascending, at least 0.3 s apart
 */
export function findTurns(view: ToneView, from: number, to: number): number[] {
  const unit = view.rateHz / 100;
  const [side, sideHalf, middleHalf] = [20 * unit, 6 * unit, 2 * unit].map(Math.round) as [
    number,
    number,
    number,
  ];
  const turns: number[] = [];
  for (let k = from + side + sideHalf; k < to - side - sideHalf; k += 2) {
    const [ax, ay] = meanPhasor(view, k - side, sideHalf);
    const [bx, by] = meanPhasor(view, k + side, sideHalf);
    const [cx, cy] = meanPhasor(view, k, middleHalf);
    const before = ax * ax + ay * ay;
    const after = bx * bx + by * by;
    const weaker = Math.min(before, after);
    if (weaker < FALL * (cx * cx + cy * cy) || Math.max(before, after) > SIDES * weaker) continue;
    if (ax * bx + ay * by > FLIP * Math.sqrt(before * after)) continue;
    if (weaker < CLEAR * view.noiseDensity[k] * (view.rateHz / (2 * sideHalf + 1))) continue;
    const last = turns[turns.length - 1];
    if (last === undefined || k - last > 30 * unit) turns.push(k);
  }
  return turns;
}

function meanPhasor(view: ToneView, middle: number, half: number): [number, number] {
  let [x, y] = [0, 0];
  for (let k = middle - half; k <= middle + half; k += 1) {
    x += view.re[k];
    y += view.im[k];
  }
  return [x / (2 * half + 1), y / (2 * half + 1)];
}
