import { STAMP_TOLERANCE } from '../../marks/usualUncertainties.ts';
/** What the narrow stream of the tone stage lets through on both sides of the pitch; 0.5 % of the highest fork, Hz. */
export const WIDEST_TOLERANCE_HZ = 20.5;

/**
 * How far a fork may be off its stamp: 0.5 % or 1.5 Hz, whichever is more (common practice, no source: makers state
 * 0.5 % or 1 Hz; half a hertz more is left for temperature and a nick).
 * @param nominalHz  > 0
 */
export function defaultToleranceHz(nominalHz: number): number {
  return Math.max(1.5, STAMP_TOLERANCE * nominalHz);
}
