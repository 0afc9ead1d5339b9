import { localSlope, toneBlocks, HAND_NP } from './toneBlocks.ts';
import type { ToneBlocks } from './toneBlocks.ts';
import type { ToneView } from '../toneView.ts';
import { blockCost, fitTwoPlaces, onTheWay, wrap } from './twoStateSegmentation.ts';
import type { TwoPlaceFit } from './twoStateSegmentation.ts';

/** A stretch of the tone: mean logarithm of the phasor over one stay of the fork, or over a block of it. */
export interface ToneStay {
  readonly timeS: number;
  /** Level, nepers (ln of the amplitude). */
  readonly levelNp: number;
  /** Phase, rad; follows the two-state model, so no turns of 2π are left in it. */
  readonly phaseRad: number;
  /** Variance of either from the room's noise. */
  readonly noiseVariance: number;
  /** True in the second of the two states, the one that the sounding doesn't begin with. */
  readonly isSecond: boolean;
}

/** A sounding taken as a fork that goes to and fro between two places. */
export interface ForkComings {
  readonly stays: readonly ToneStay[];
  /** Median distance of a block from its place, Np and rad together: the hand and the noise. */
  readonly scatter: number;
  /** Median variance of a block's level and phase from the room's noise, Np² and rad². */
  readonly noiseVariance: number;
  /** Most blocks in a row that are at neither place and on no way between them, though the room is quiet. */
  readonly longestStrange: number;
  /** Mean cost of a block of the stays, 1 for two places and the hand and noise that are allowed for, 8 at most. */
  readonly misfit: number;
}

/** A block that costs more belongs to neither place. */
const STRANGE_COST = 5;
/** The pitch is known to a few hundredths of a hertz: over ten seconds that turns the phase a good deal. */
const SLOPES_RAD_PER_S = [0, -0.15, 0.15];

/**
 * Finds how the fork goes to and fro in one sounding. Two places, each with its level and phase; the fork's dying
 * and a rest of its offset are lines through both. Fitted from many starts, the likeliest kept.
 * @param from  first value of the sounding, index into the view; `to`: one past the last
 * @returns null where the sounding is shorter than 2 s
 */
export function findComings(view: ToneView, from: number, to: number): ForkComings | null {
  const blocks = toneBlocks(view, from, to);
  if (blocks.count < 20) return null;
  const local = localSlope(blocks);
  const slopes = SLOPES_RAD_PER_S.flatMap((slope) => [slope, local + slope]);
  let best: TwoPlaceFit | null = null;
  for (const level of [-1.6, -0.7, -0.25, 0.25, 0.7, 1.3, 2.2]) {
    for (const phase of [0, 1, 2, Math.PI, -2, -1]) {
      for (const slope of slopes) {
        const fit = fitTwoPlaces(blocks, [level, phase, slope]);
        if (best === null || fit.cost < best.cost) best = fit;
      }
    }
  }
  if (best === null) return null;
  return summarise(blocks, best);
}

/** The stays at either place, each with the mean of its blocks. */
function summarise(blocks: ToneBlocks, { states, model }: TwoPlaceFit): ForkComings {
  const stays: ToneStay[] = [];
  const [l0, l1, ls] = model.level;
  const [p0, p1, ps] = model.phase;
  let cost = 0;
  const distances: number[] = [];
  let [strange, longestStrange] = [0, 0];
  let start = 0;
  for (let end = 1; end <= blocks.count; end += 1) {
    if (end < blocks.count && states[end] === states[start]) continue;
    let [w, t, level, phase, noise] = [0, 0, 0, 0, 0];
    const s = states[start];
    for (let b = start; b < end; b += 1) {
      if (onTheWay(states, b)) continue;
      const time = blocks.timeS[b];
      const v = blocks.noiseVariance[b];
      const weight = 1 / (HAND_NP ** 2 + v);
      const dl = blocks.levelNp[b] - l0 - l1 * time - s * ls;
      const dp = wrap(blocks.phaseRad[b] - p0 - p1 * time - s * ps);
      distances.push(Math.hypot(dl, dp));
      const own = blockCost(blocks, model, b, s);
      cost += own;
      strange = own > STRANGE_COST && v < 0.05 ? strange + 1 : 0;
      longestStrange = Math.max(longestStrange, strange);
      w += weight;
      t += weight * time;
      level += weight * blocks.levelNp[b];
      phase += weight * (p0 + p1 * time + s * ps + dp);
      noise += weight * weight * v;
    }
    if (w > 0) {
      stays.push({
        timeS: t / w,
        levelNp: level / w,
        phaseRad: phase / w,
        noiseVariance: noise / (w * w),
        isSecond: s === 1,
      });
    }
    start = end;
  }
  return {
    stays,
    scatter: distances.sort((a, b) => a - b)[distances.length >> 1] ?? 0,
    noiseVariance: blocks.noiseVariance.slice().sort()[blocks.count >> 1],
    longestStrange,
    misfit: cost / Math.max(1, distances.length),
  };
}
