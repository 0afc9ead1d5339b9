import { coarsePitchHz } from './coarseFrequency.ts';
import { BLOCK, fitPhaseLine } from './phaseRegression.ts';
import type { PitchEstimate } from './phaseRegression.ts';

export type { PitchEstimate } from './phaseRegression.ts';

/**
 * Pitch of the strongest steady tone in a stretch of the narrow stream: coarse from spectra, fine from a robust line
 * through the phase.
 * @param re  narrow values, real parts; `im` alike
 * @param from  first index; `to`: one past the last; at least 30 values
 * @param rateHz  narrow values a second
 * @param rangeHz  how far from 0 Hz the tone may be
 * @param noiseMeanSquare  mean |noise|² of one narrow value
 * @returns null where the stretch is too short, nothing but zeros, or where all that is in reach is the foot of a tone
 *   outside of it
 */
export function estimatePitch(
  re: ArrayLike<number>,
  im: ArrayLike<number>,
  from: number,
  to: number,
  rateHz: number,
  rangeHz: number,
  noiseMeanSquare: number,
): PitchEstimate | null {
  if (to - from < 3 * BLOCK) return null;
  const coarseHz = coarsePitchHz(re, im, from, to, rateHz, rangeHz);
  if (coarseHz === null) return null;
  return fitPhaseLine(re, im, from, to, rateHz, coarseHz, noiseMeanSquare);
}
