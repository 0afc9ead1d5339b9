import type { ToneSegment } from './toneSegment.ts';

/** About so many values make a block whose mean gives one phase: 0.1 s of 100 a second. */
export const BLOCK = 10;

/** One phase and its weight a block of a segment, in the frame that turns with the coarse frequency. */
export interface BlockPhases {
  readonly count: number;
  /** One block's length, s. */
  readonly blockS: number;
  readonly phaseRad: Float64Array;
  /** The phase's cosine and sine. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  /** Inverse variance of the phase, 1/rad². */
  readonly weight: Float64Array;
}

/**
 * Means of a segment's blocks. They share all values evenly: a slope's variance goes with the third power of the
 * length that is used.
 * @param coarseHz  frequency of the frame
 * @param noiseMeanSquare  mean |noise|² of one value
 * @example
 * const quarterTurn = { re: new Float64Array(30), im: new Float64Array(30).fill(1), from: 0, to: 30, rateHz: 100 };
 * blockPhases(quarterTurn, 0, 1e-6).phaseRad // → [1.5707963268, 1.5707963268, 1.5707963268]
 */
export function blockPhases(segment: ToneSegment, coarseHz: number, noiseMeanSquare: number): BlockPhases {
  const { re, im, from, to, rateHz } = segment;
  const count = Math.round((to - from) / BLOCK);
  const phaseRad = new Float64Array(count);
  const cos = new Float64Array(count);
  const sin = new Float64Array(count);
  const weight = new Float64Array(count);
  const turn = (-2 * Math.PI * coarseHz) / rateHz;
  const turnCos = Math.cos(turn);
  const turnSin = Math.sin(turn);
  let start = from;
  for (let b = 0; b < count; b += 1) {
    const end = from + Math.round(((b + 1) * (to - from)) / count);
    const n = end - start;
    let x = 0;
    let y = 0;
    let c = Math.cos(turn * (start - from));
    let s = Math.sin(turn * (start - from));
    for (let k = start; k < end; k += 1) {
      x += re[k] * c - im[k] * s;
      y += re[k] * s + im[k] * c;
      const next = c * turnCos - s * turnSin;
      s = c * turnSin + s * turnCos;
      c = next;
    }
    phaseRad[b] = Math.atan2(y, x);
    const size = Math.sqrt(x * x + y * y);
    cos[b] = size > 0 ? x / size : 1;
    sin[b] = size > 0 ? y / size : 0;
    const power = (x * x + y * y) / (n * n);
    const signalToNoise = Math.max(0, power / (noiseMeanSquare / n + 1e-30) - 1);
    // A phase's variance is 1/2SNR from noise plus the hand's unsteadiness (0.2 rad): the weight saturates.
    weight[b] = 1 / (0.04 + 1 / (2 * signalToNoise + 1e-6));
    start = end;
  }
  return { count, blockS: (to - from) / count / rateHz, phaseRad, cos, sin, weight };
}
