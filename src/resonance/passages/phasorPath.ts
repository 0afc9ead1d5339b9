import { smoothedPhasor } from '../tonePower.ts';
import type { ToneView } from '../toneView.ts';
import type { SlideDirection } from './passageTemplates.ts';

/** Where the path is looked at, half widths from the middle of the shape. */
const STATIONS = [-6, -4, -2.5, -1.6, -1, -0.5, 0.5, 1, 1.6, 2.5, 4, 6] as const;

/** How many numbers a path has: a real and an imaginary part for each place. */
export const PATH_LENGTH = 2 * STATIONS.length;

/** Further away than this it is no resonance's circle any more, diameters. */
const FURTHEST = 2;

/** A passage in its view; indices and widths in values. */
export interface PathPlace {
  readonly middle: number;
  readonly peakIndex: number;
  readonly halfWidth: number;
  readonly direction: SlideDirection;
  /** Half of the values that are averaged at each place. */
  readonly smoothingHalf: number;
  /** Last index that may be used. */
  readonly lastIndex: number;
  /** The phasor beside the passage: the direct sound. */
  readonly direct: { readonly re: number; readonly im: number };
}

/**
 * The way of the phasor past a resonance: 0 at the direct sound, 1 at the level's peak, and the imaginary part turned so
 * that a column that grows and one that shrinks go the same way round. A passage through a resonance of one pole draws
 * much of the same circle, 1/(1 + ix) with x the distance in half widths, at whatever speed, loudness and phase; a hand, a
 * voice or a note draws something else.
 * @returns PATH_LENGTH numbers within ±2, the real parts first; NaN at what isn't heard (yet)
 */
export function phasorPath(view: ToneView, place: PathPlace): readonly number[] {
  const { middle, peakIndex, halfWidth, direction, smoothingHalf, lastIndex, direct } = place;
  /** The phasor over the direct sound, of as many values as may be used. */
  const above = (index: number): { re: number; im: number } => {
    const mean = smoothedPhasor(view, index, Math.max(1, Math.min(smoothingHalf, lastIndex - index)));
    return { re: mean.re - direct.re, im: mean.im - direct.im };
  };
  const top = above(peakIndex);
  const diameterSquared = top.re * top.re + top.im * top.im + 1e-30;
  const path = STATIONS.map((halfWidths) => {
    const index = Math.round(middle + halfWidths * halfWidth);
    if (index < 0 || index > lastIndex) return { re: NaN, im: NaN };
    const { re, im } = above(index);
    return {
      re: within((re * top.re + im * top.im) / diameterSquared),
      im: within((direction * (im * top.re - re * top.im)) / diameterSquared),
    };
  });
  return [...path.map(({ re }) => re), ...path.map(({ im }) => im)];
}

const within = (value: number): number => Math.max(-FURTHEST, Math.min(FURTHEST, value));
