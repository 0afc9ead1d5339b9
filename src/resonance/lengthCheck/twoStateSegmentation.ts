import { stepLine } from './stepLine.ts';
import type { StepLine, StepLineRow } from './stepLine.ts';
import { HAND_NP, HAND_RAD } from './toneBlocks.ts';
import type { ToneBlocks } from './toneBlocks.ts';

/** What a change of state costs in log-likelihood: neighbouring blocks share the hand's wobble. */
const SWITCH_COST = 9;
/** A block far off (a voice, a move in progress) costs no more than this. */
const MOST_COST = 8;
/** Blocks left out on either side of a change: the fork is on its way for 0.2 to 0.5 s. */
const MOVE_BLOCKS = 2;
const ROUNDS = 12;
/** Blocks that the first guess of the phase is taken from. */
const FIRST_BLOCKS = 15;

/** Two states of the tone, one a place of the fork: level and phase as lines in time, with the step between the states. */
export interface TwoStateModel {
  readonly level: StepLine;
  readonly phase: StepLine;
}

export const wrap = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));

/** Which state each block belongs to, 0 or 1, the model, and what it all costs in log-likelihood. */
export interface TwoStateFit {
  readonly states: Uint8Array;
  readonly model: TwoStateModel;
  readonly cost: number;
}

/** Where a segmentation starts from. */
export interface StartingPoint {
  readonly levelStepNp: number;
  readonly phaseStepRad: number;
  readonly phaseSlopeRadPerS: number;
}

/**
 * Two-state segmentation: states by dynamic programming (Viterbi 1967, IEEE Trans. Inf. Theory 13, 260), lines and step
 * by least squares, in turn, from one start.
 */
export function segmentTwoStates(blocks: ToneBlocks, start: StartingPoint): TwoStateFit {
  let model = firstModel(blocks, start);
  let states: Uint8Array = new Uint8Array(blocks.count);
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

/** The phase of the first second and a half, and a level line that runs between the two states. */
function firstModel(
  blocks: ToneBlocks,
  { levelStepNp, phaseStepRad, phaseSlopeRadPerS }: StartingPoint,
): TwoStateModel {
  const [base, fall] = lineThrough(blocks.timeS, blocks.levelNp);
  const phase = circularMean(blocks.phaseRad.subarray(0, FIRST_BLOCKS));
  return {
    level: { base: base - levelStepNp / 2, slope: fall, step: levelStepNp },
    phase: { base: phase, slope: phaseSlopeRadPerS, step: phaseStepRad },
  };
}

/** How far a block is from a state of the model, level in Np and phase in rad. */
export function distanceFrom(blocks: ToneBlocks, { level, phase }: TwoStateModel, b: number, state: number) {
  const t = blocks.timeS[b];
  return {
    levelNp: blocks.levelNp[b] - level.base - level.slope * t - state * level.step,
    phaseRad: wrap(blocks.phaseRad[b] - phase.base - phase.slope * t - state * phase.step),
  };
}

/** Half the squared distance of a block from a state, in units of its scatter; limited. */
export function blockCost(blocks: ToneBlocks, model: TwoStateModel, b: number, state: number): number {
  const noise = blocks.noiseVariance[b];
  const { levelNp, phaseRad } = distanceFrom(blocks, model, b, state);
  const cost =
    (levelNp * levelNp) / (HAND_NP ** 2 + noise) / 2 + (phaseRad * phaseRad) / (HAND_RAD ** 2 + noise) / 2;
  return Math.min(MOST_COST, cost);
}

/** The cheapest path through the states; it begins in the first. */
function viterbi(blocks: ToneBlocks, model: TwoStateModel): { states: Uint8Array; cost: number } {
  const n = blocks.count;
  /** Whether the cheapest path to a block in a state came from the other state. */
  const hasSwitched = [new Uint8Array(n), new Uint8Array(n)];
  let costs = [blockCost(blocks, model, 0, 0), Infinity];
  for (let b = 1; b < n; b += 1) {
    const next = [0, 0];
    for (const state of [0, 1]) {
      const stay = costs[state];
      const move = costs[1 - state] + SWITCH_COST;
      hasSwitched[state][b] = move < stay ? 1 : 0;
      next[state] = Math.min(stay, move) + blockCost(blocks, model, b, state);
    }
    costs = next;
  }
  const states = new Uint8Array(n);
  let state = costs[1] < costs[0] ? 1 : 0;
  for (let b = n - 1; b >= 0; b -= 1) {
    states[b] = state;
    if (b > 0 && hasSwitched[state][b] === 1) state = 1 - state;
  }
  return { states, cost: Math.min(costs[0], costs[1]) };
}

/** Weighted least squares for lines and steps, blocks that are far off or on the way left out. */
function refit(blocks: ToneBlocks, states: Uint8Array, model: TwoStateModel): TwoStateModel {
  const level: StepLineRow[] = [];
  const phase: StepLineRow[] = [];
  const { base, slope, step } = model.phase;
  for (let b = 0; b < blocks.count; b += 1) {
    const state = states[b];
    if (isMoving(states, b) || blockCost(blocks, model, b, state) >= MOST_COST) continue;
    const t = blocks.timeS[b];
    const noise = blocks.noiseVariance[b];
    const expected = base + slope * t + state * step;
    level.push({ weight: 1 / (HAND_NP ** 2 + noise), t, state, y: blocks.levelNp[b] });
    phase.push({
      weight: 1 / (HAND_RAD ** 2 + noise),
      t,
      state,
      y: expected + wrap(blocks.phaseRad[b] - expected),
    });
  }
  return { level: stepLine(level) ?? model.level, phase: stepLine(phase) ?? model.phase };
}

/** Is a block so near a change of state that the fork is on its way? */
export function isMoving(states: Uint8Array, b: number): boolean {
  for (let k = Math.max(1, b - MOVE_BLOCKS + 1); k <= Math.min(states.length - 1, b + MOVE_BLOCKS); k += 1) {
    if (states[k] !== states[k - 1]) return true;
  }
  return false;
}

/** @returns value at 0 and slope */
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

function circularMean(angles: Float64Array): number {
  let [x, y] = [0, 0];
  for (const angle of angles) {
    x += Math.cos(angle);
    y += Math.sin(angle);
  }
  return Math.atan2(y, x);
}
