import { requireInRange } from '../numeric/requireInRange.ts';

/** A maximum that stands out by less is hardly one, dB. */
const LOWEST_RISE_DB = 3;
const HIGHEST_RISE_DB = 300;

/**
 * Standard deviation of the loudest place about the resonance's centre, in half widths, where nothing is known of the
 * angle between the fork's direct sound and the column's. On the way through resonance the sound is |1 + m e^{iθ}/(1 + ix)|
 * with x in half widths; its largest value R lies at x = sin θ / (R + cos θ), whose mean square over all θ is
 * R/√(R² − 1) − 1.
 * @param riseDb  loudest over the fork alone, 20 lg R; below 3 dB as at 3 dB
 * @throws RangeError unless it is a finite number of at most 300
 * @example
 * loudestPlaceHalfWidths(8) // → 0.3
 */
export function loudestPlaceHalfWidths(riseDb: number): number {
  requireInRange('riseDb', riseDb, -HIGHEST_RISE_DB, HIGHEST_RISE_DB);
  const square = 10 ** (Math.max(riseDb, LOWEST_RISE_DB) / 10);
  // R/√(R² − 1) − 1 in a form that keeps its digits where R is large.
  const root = Math.sqrt(1 - 1 / square);
  return Math.sqrt(1 / square / (root * (1 + root)));
}

/**
 * Rise that a resonance of the same column has where it is wider: the column's part falls as its resonances widen. Taken
 * with that part at right angles to the direct sound, halfway between helping and hindering: R − 1/R is their ratio.
 * @param riseDb  of the narrower resonance, 0..300
 * @param widening  width over the narrower one's, >= 1
 * @returns dB
 * @throws RangeError naming the argument, its range and the value
 * @example
 * widerRiseDb(10, 2) // → 5.8
 */
export function widerRiseDb(riseDb: number, widening: number): number {
  requireInRange('riseDb', riseDb, 0, HIGHEST_RISE_DB);
  requireInRange('widening', widening, 1, Infinity);
  const loudest = 10 ** (riseDb / 20);
  const half = (loudest - 1 / loudest) / (2 * widening);
  return 20 * Math.log10(half + Math.hypot(half, 1));
}
