import type { ToneView } from '../toneView.ts';
import { HAND_NP, localSlope, toneBlocks } from './toneBlocks.ts';
import type { ToneBlocks } from './toneBlocks.ts';
import { blockCost, distanceFrom, isMoving, segmentTwoStates } from './twoStateSegmentation.ts';
import type { TwoStateFit, TwoStateModel } from './twoStateSegmentation.ts';

/** The tone over one dwell of the fork in one place: its mean level and phase. */
export interface Dwell {
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
export interface ForkDwells {
  readonly dwells: readonly Dwell[];
  /** Median distance of a block from its state, Np and rad together: the hand and the noise. */
  readonly scatter: number;
  /** Median variance of a block's level and phase from the room's noise, Np² and rad². */
  readonly noiseVariance: number;
  /** Most blocks in a row that are in neither state and on no way between them, though the room is quiet. */
  readonly longestOutliers: number;
  /** Mean cost of a block of the dwells, 1 for two states and the hand and noise that are allowed for, 8 at most. */
  readonly misfit: number;
}

/** Fewest blocks: 2 s. */
const LEAST_BLOCKS = 20;
/** A block that costs more belongs to neither state, unless noise is what moves it. */
const OUTLIER_COST = 5;
const QUIET_VARIANCE = 0.05;
/** Starts of the segmentation. */
const LEVEL_STEPS_NP = [-1.6, -0.7, -0.25, 0.25, 0.7, 1.3, 2.2];
const PHASE_STEPS_RAD = [0, 1, 2, Math.PI, -2, -1];
/** The frequency is known to a few hundredths of a hertz: over ten seconds that turns the phase a good deal. */
const SLOPES_RAD_PER_S = [0, -0.15, 0.15];

/**
 * Finds how the fork goes to and fro in one sounding: two states, each with its level and phase; the fork's dying and
 * a rest of its offset are lines through both. Segmented from many starts, the likeliest kept.
 * @param from  first value of the sounding, index into the view; `to`: one past the last
 * @returns null where the sounding is shorter than 2 s
 */
export function findDwells(view: ToneView, from: number, to: number): ForkDwells | null {
  const blocks = toneBlocks(view, from, to);
  if (blocks.count < LEAST_BLOCKS) return null;
  const local = localSlope(blocks);
  const slopes = SLOPES_RAD_PER_S.flatMap((slope) => [slope, local + slope]);
  let best: TwoStateFit | null = null;
  for (const levelStepNp of LEVEL_STEPS_NP) {
    for (const phaseStepRad of PHASE_STEPS_RAD) {
      for (const phaseSlopeRadPerS of slopes) {
        const fit = segmentTwoStates(blocks, { levelStepNp, phaseStepRad, phaseSlopeRadPerS });
        if (best === null || fit.cost < best.cost) best = fit;
      }
    }
  }
  return best === null ? null : summarise(blocks, best);
}

/** The dwells, each with the mean of its blocks, those on the way left out. */
function summarise(blocks: ToneBlocks, { states, model }: TwoStateFit): ForkDwells {
  const dwells: Dwell[] = [];
  const distances: number[] = [];
  let cost = 0;
  let [outliers, longestOutliers] = [0, 0];
  let start = 0;
  for (let end = 1; end <= blocks.count; end += 1) {
    if (end < blocks.count && states[end] === states[start]) continue;
    const state = states[start];
    const still = Array.from({ length: end - start }, (_, i) => start + i).filter(
      (b) => !isMoving(states, b),
    );
    for (const b of still) {
      const off = distanceFrom(blocks, model, b, state);
      distances.push(Math.hypot(off.levelNp, off.phaseRad));
      const own = blockCost(blocks, model, b, state);
      cost += own;
      outliers = own > OUTLIER_COST && blocks.noiseVariance[b] < QUIET_VARIANCE ? outliers + 1 : 0;
      longestOutliers = Math.max(longestOutliers, outliers);
    }
    if (still.length > 0) dwells.push(meanOf(blocks, model, still, state));
    start = end;
  }
  return {
    dwells,
    scatter: distances.length === 0 ? 0 : distances.sort((a, b) => a - b)[distances.length >> 1],
    noiseVariance: blocks.noiseVariance.slice().sort()[blocks.count >> 1],
    longestOutliers,
    misfit: cost / Math.max(1, distances.length),
  };
}

/** Weighted mean of some blocks of one state. @param still  at least one block */
function meanOf(blocks: ToneBlocks, model: TwoStateModel, still: readonly number[], state: number): Dwell {
  const { base, slope, step } = model.phase;
  let [w, t, level, phase, noise] = [0, 0, 0, 0, 0];
  for (const b of still) {
    const time = blocks.timeS[b];
    const variance = blocks.noiseVariance[b];
    const weight = 1 / (HAND_NP ** 2 + variance);
    const { phaseRad } = distanceFrom(blocks, model, b, state);
    w += weight;
    t += weight * time;
    level += weight * blocks.levelNp[b];
    phase += weight * (base + slope * time + state * step + phaseRad);
    noise += weight * weight * variance;
  }
  return {
    timeS: t / w,
    levelNp: level / w,
    phaseRad: phase / w,
    noiseVariance: noise / (w * w),
    isSecond: state === 1,
  };
}
