import { findStretches, splitAtStrikes } from './soundings.ts';
import type { SoundingSpan } from './soundings.ts';
import { findStrikes } from './strikes.ts';
import type { MovingView } from './toneView.ts';

/** A long series is searched in windows of this length, s, with so much in view on either side. */
const WINDOW_S = 120;
const BESIDE_S = 0.5;

/**
 * The soundings of a whole series, in memory that grows with the longest time from one strike to the next alone.
 * @param view  of the series; is moved along it
 * @param offsetHz  the fork's frequency less the one that was moved to 0 Hz
 */
export function seriesSoundings(view: MovingView, offsetHz: number): readonly SoundingSpan[] {
  const { series } = view;
  const shortest = Math.round(WINDOW_S * series.rateHz);
  const beside = Math.round(BESIDE_S * series.rateHz);
  const found: SoundingSpan[] = [];
  let length = shortest;
  let isStruckAgain = false;
  for (let from = 0; from < series.length;) {
    const first = Math.max(0, from - beside);
    const to = Math.min(series.length, from + length);
    view.show(first, Math.min(series.length, to + beside), offsetHz);
    const { closed, open, settled } = findStretches(view, from - first, to - first, isStruckAgain);
    for (const stretch of closed) found.push(...splitAtStrikes(view, stretch));
    if (to === series.length) {
      if (open !== null) found.push(...splitAtStrikes(view, open));
      break;
    }
    // A tone that fills all of the window is cut at its last strike; without one it needs a longer window.
    const isFull = first + settled === from;
    const strike = isFull ? findStrikes(view, from - first, to - first).at(-1) : undefined;
    if (isFull && (open === null || strike === undefined)) {
      length *= 2;
      continue;
    }
    if (open !== null && strike !== undefined) {
      found.push(...splitAtStrikes(view, { from: open.from, to: strike, ended: true }));
    }
    isStruckAgain = isFull;
    length = shortest;
    from = first + (strike ?? settled);
  }
  return found;
}
