import { stepLine } from './stepLine.ts';
import { HAND_NP, HAND_RAD } from './toneBlocks.ts';
import type { ToneBlocks } from './toneBlocks.ts';

/** What a change of place costs in log-likelihood: neighbouring blocks share the hand's wobble. */
const SWITCH_COST = 9;
/** A block far off (a voice, a move in progress) costs no more than this. */
const MOST_COST = 8;
/** Blocks left out on either side of a change: the fork is on its way for 0.2 to 0.5 s. */
const MOVE_BLOCKS = 2;
const ROUNDS = 12;

/** Level and phase as lines in time, and the step between the two places. */
export interface TwoPlaces {
  readonly level: readonly [number, number, number];
  readonly phase: readonly [number, number, number];
}

export const wrap = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));

/** Which block belongs to which place, 0 or 1, the lines through them, and what it all costs in log-likelihood. */
export interface TwoPlaceFit {
  readonly states: Uint8Array;
  readonly model: TwoPlaces;
  readonly cost: number;
}

/**
 * Places are assigned by dynamic programming (Viterbi 1967, IEEE Trans. Inf. Theory 13, 260), lines and step by least
 * squares, in turn, from one start.
 */
export function fitTwoPlaces(
  blocks: ToneBlocks,
  [levelStep, phaseStep, slope]: readonly [number, number, number],
): TwoPlaceFit {
  const n = blocks.count;
  const span = Math.min(15, n);
  // Start from the phase of the first second and a half, and a level line that runs between the two places.
  const [base, fall] = lineThrough(blocks.timeS, blocks.levelNp);
  let model: TwoPlaces = {
    level: [base - levelStep / 2, fall, levelStep],
    phase: [circularMean(blocks.phaseRad, span), slope, phaseStep],
  };
  let states: Uint8Array = new Uint8Array(n);
  let cost = Infinity;
  for (let round = 0; round < ROUNDS; round += 1) {
    const path = viterbi(blocks, model);
    states = path.states;
    if (Math.abs(cost - path.cost) < 1e-6) break;
    cost = path.cost;
    model = refit(blocks, states, model);
  }
  return { states, model, cost };
}

/** Half the squared distance of a block from a place, in units of its scatter; limited. */
export function blockCost(blocks: ToneBlocks, model: TwoPlaces, b: number, state: number): number {
  const t = blocks.timeS[b];
  const [l0, l1, ls] = model.level;
  const [p0, p1, ps] = model.phase;
  const noise = blocks.noiseVariance[b];
  const dl = blocks.levelNp[b] - l0 - l1 * t - state * ls;
  const dp = wrap(blocks.phaseRad[b] - p0 - p1 * t - state * ps);
  const cost = (dl * dl) / (HAND_NP ** 2 + noise) / 2 + (dp * dp) / (HAND_RAD ** 2 + noise) / 2;
  return Math.min(MOST_COST, cost);
}

function viterbi(blocks: ToneBlocks, model: TwoPlaces): { states: Uint8Array; cost: number } {
  const n = blocks.count;
  const came = [new Uint8Array(n), new Uint8Array(n)] as const;
  // It begins in the first state.
  let costs: [number, number] = [blockCost(blocks, model, 0, 0), Infinity];
  for (let b = 1; b < n; b += 1) {
    const next: [number, number] = [0, 0];
    for (const state of [0, 1] as const) {
      const stay = costs[state];
      const move = costs[state === 0 ? 1 : 0] + SWITCH_COST;
      came[state][b] = move < stay ? 1 : 0;
      next[state] = Math.min(stay, move) + blockCost(blocks, model, b, state);
    }
    costs = next;
  }
  const states = new Uint8Array(n);
  let state: 0 | 1 = costs[1] < costs[0] ? 1 : 0;
  for (let b = n - 1; b >= 0; b -= 1) {
    states[b] = state;
    if (b > 0 && came[state][b] === 1) state = state === 0 ? 1 : 0;
  }
  return { states, cost: Math.min(costs[0], costs[1]) };
}

/** Weighted least squares for lines and steps, blocks that are far off or on the way left out. */
function refit(blocks: ToneBlocks, states: Uint8Array, model: TwoPlaces): TwoPlaces {
  const rows: { t: number; s: number; level: number; phase: number; wl: number; wp: number }[] = [];
  const [p0, p1, ps] = model.phase;
  for (let b = 0; b < blocks.count; b += 1) {
    const s = states[b];
    if (onTheWay(states, b) || blockCost(blocks, model, b, s) >= MOST_COST) continue;
    const t = blocks.timeS[b];
    const noise = blocks.noiseVariance[b];
    const expected = p0 + p1 * t + s * ps;
    rows.push({
      t,
      s,
      level: blocks.levelNp[b],
      phase: expected + wrap(blocks.phaseRad[b] - expected),
      wl: 1 / (HAND_NP ** 2 + noise),
      wp: 1 / (HAND_RAD ** 2 + noise),
    });
  }
  return {
    level: stepLine(rows.map((r) => [r.wl, r.t, r.s, r.level])) ?? model.level,
    phase: stepLine(rows.map((r) => [r.wp, r.t, r.s, r.phase])) ?? model.phase,
  };
}

/** Is a block so near a change of place that the fork is on its way? */
export function onTheWay(states: Uint8Array, b: number): boolean {
  for (let k = Math.max(1, b - MOVE_BLOCKS + 1); k <= Math.min(states.length - 1, b + MOVE_BLOCKS); k += 1) {
    if (states[k] !== states[k - 1]) return true;
  }
  return false;
}

function lineThrough(t: Float64Array, y: Float64Array): [number, number] {
  const n = t.length;
  const tm = t.reduce((a, b) => a + b, 0) / n;
  const ym = y.reduce((a, b) => a + b, 0) / n;
  let [tt, ty] = [0, 0];
  for (let i = 0; i < n; i += 1) {
    tt += (t[i] - tm) ** 2;
    ty += (t[i] - tm) * y[i];
  }
  const slope = tt > 0 ? ty / tt : 0;
  return [ym - slope * tm, slope];
}

function circularMean(angles: Float64Array, count: number): number {
  let [x, y] = [0, 0];
  for (let i = 0; i < count; i += 1) {
    x += Math.cos(angles[i]);
    y += Math.sin(angles[i]);
  }
  return Math.atan2(y, x);
}
