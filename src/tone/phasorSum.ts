import type { BlockPhases } from './blockPhases.ts';

/** A complex value that stands for a tone's amplitude and phase. */
export interface Phasor {
  readonly re: number;
  readonly im: number;
}

/** Phasors of blocks that follow each other at equal distances. */
export interface Phasors {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * A phasor along each block's phase, as long as its weight.
 * @example
 * const none = new Float64Array(0);
 * const still = { count: 2, blockS: 0.1, phaseRad: none, weight: none, cos: [1, 0], sin: [0, 1] };
 * weightedPhasors(still, [2, 3]) // → { re: [2, 0], im: [0, 3] }
 */
export function weightedPhasors({ cos, sin }: BlockPhases, weights: Float64Array): Phasors {
  const re = new Float64Array(cos.length);
  const im = new Float64Array(cos.length);
  for (let b = 0; b < cos.length; b += 1) {
    re[b] = weights[b] * cos[b];
    im[b] = weights[b] * sin[b];
  }
  return { re, im };
}

/** Which phasors are summed, [from, to), and how each is turned before: the first by `startRad`, every next by `turnRad` more. */
export interface Rotation {
  readonly from: number;
  readonly to: number;
  readonly startRad: number;
  readonly turnRad: number;
}

/**
 * Sum of phasors, each turned: one bin of a discrete Fourier transform at any frequency.
 * @example
 * const phasors = { re: Float64Array.of(1, 0), im: Float64Array.of(0, 1) };
 * rotatedSum(phasors, { from: 0, to: 2, startRad: 0, turnRad: -Math.PI / 2 }) // → { re: 2, im: 0 }
 */
export function rotatedSum({ re, im }: Phasors, { from, to, startRad, turnRad }: Rotation): Phasor {
  const turnCos = Math.cos(turnRad);
  const turnSin = Math.sin(turnRad);
  let c = Math.cos(startRad);
  let s = Math.sin(startRad);
  let x = 0;
  let y = 0;
  for (let b = from; b < to; b += 1) {
    x += re[b] * c - im[b] * s;
    y += re[b] * s + im[b] * c;
    const next = c * turnCos - s * turnSin;
    s = c * turnSin + s * turnCos;
    c = next;
  }
  return { re: x, im: y };
}

/**
 * Sum of all phasors, each turned back by the phase of a line through 0 in the middle of its block.
 * @example
 * const phasors = { re: Float64Array.of(1, -1), im: Float64Array.of(0, 0) };
 * const { re, im } = sumAlongLine(phasors, 5, 0.1);
 * Math.hypot(re, im) // → 2
 */
export const sumAlongLine = (phasors: Phasors, slopeHz: number, blockS: number): Phasor => {
  const turnRad = -2 * Math.PI * slopeHz * blockS;
  return rotatedSum(phasors, { from: 0, to: phasors.re.length, startRad: turnRad / 2, turnRad });
};
