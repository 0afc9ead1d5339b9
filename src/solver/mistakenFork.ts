import { SCHOOL_FORKS_HZ } from '../marks/usualForks.ts';
import type { PreparedMark } from './prepareMarks.ts';

/** A mistaken fork must explain the speed to within this part, twice the speed's own uncertainty included. */
const FORK_MATCH = 0.004;
/** Nearer than this part it is the noted fork. */
const SAME_FORK = 0.01;

/**
 * A single fork whose frequency would bring the speed to what it should be.
 * @param rows  at least one
 * @param ratio  speed found over speed expected, > 0
 * @param relativeUncertainty  standard uncertainty of the speed found over the speed
 * @param furtherHz  forks beside those of school sets
 * @returns the noted and the nearest fitting frequency, Hz; null where there are several forks or none fits
 */
export function mistakenFork(
  rows: readonly PreparedMark[],
  ratio: number,
  relativeUncertainty: number,
  furtherHz: readonly number[] = [],
): { readonly fittingHz: number; readonly notedHz: number } | null {
  const forks = new Set(rows.map((row) => row.mark.frequencyHz));
  const [notedHz] = forks;
  if (forks.size !== 1 || notedHz === undefined) return null;
  // The waves are as long as the true fork makes them: noted over true frequency is the speeds' ratio.
  const trueHz = notedHz / ratio;
  const near = [...new Set([...furtherHz, ...SCHOOL_FORKS_HZ])]
    .map((hz) => ({ hz, off: Math.abs(hz / trueHz - 1) }))
    .filter(
      ({ hz, off }) => off < FORK_MATCH + 2 * relativeUncertainty && Math.abs(hz / notedHz - 1) > SAME_FORK,
    )
    .sort((one, other) => one.off - other.off)
    .at(0);
  return near === undefined ? null : { fittingHz: near.hz, notedHz };
}
