import type { ToneView } from '../toneView.ts';

/** Values in a block: 0.1 s. */
const BLOCK = 10;
/** Hand's unsteadiness from block to block: 1.3 dB and 0.2 rad (common practice, no source). */
export const HAND_NP = 0.15;
export const HAND_RAD = 0.2;

/** Level and phase of a stretch of the tone, block by block. */
export interface ToneBlocks {
  readonly count: number;
  readonly timeS: Float64Array;
  readonly levelNp: Float64Array;
  readonly phaseRad: Float64Array;
  readonly noiseVariance: Float64Array;
}

/** @param from  first value, index into the view; `to`: one past the last */
export function toneBlocks(view: ToneView, from: number, to: number): ToneBlocks {
  const count = Math.max(0, Math.floor((to - from) / BLOCK));
  const blocks = {
    count,
    timeS: new Float64Array(count),
    levelNp: new Float64Array(count),
    phaseRad: new Float64Array(count),
    noiseVariance: new Float64Array(count),
  };
  for (let b = 0; b < count; b += 1) {
    let [x, y, noise] = [0, 0, 0];
    for (let k = from + b * BLOCK; k < from + (b + 1) * BLOCK; k += 1) {
      x += view.re[k] / BLOCK;
      y += view.im[k] / BLOCK;
      noise += (view.noiseDensity[k] * view.rateHz) / BLOCK / BLOCK;
    }
    const power = x * x + y * y;
    blocks.timeS[b] = ((b + 0.5) * BLOCK) / view.rateHz;
    blocks.levelNp[b] = 0.5 * Math.log(power + 1e-30);
    blocks.phaseRad[b] = Math.atan2(y, x);
    // Each of ln|z| and arg z has the variance 1/2SNR for a good signal.
    blocks.noiseVariance[b] = Math.min(4, noise / 2 / (power + 1e-30));
  }
  return blocks;
}

/**
 * Slope of the phase from its steps over 0.3 s, rad per s: most of them lie within one dwell. A slope through the whole
 * sounding can be a modulation sideband of the coming and going instead.
 */
export function localSlope(blocks: ToneBlocks): number {
  const lag = 3;
  let [x, y] = [0, 0];
  for (let b = lag; b < blocks.count; b += 1) {
    const noise = blocks.noiseVariance[b] + blocks.noiseVariance[b - lag];
    const step = blocks.phaseRad[b] - blocks.phaseRad[b - lag];
    const weight = 1 / (2 * HAND_RAD ** 2 + noise);
    x += weight * Math.cos(step);
    y += weight * Math.sin(step);
  }
  const lagS = blocks.timeS[lag] - blocks.timeS[0];
  return Math.atan2(y, x) / lagS;
}
