import { resonanceWidthM } from '../air/columnResonance.ts';
import type { ColumnDamping } from '../air/columnResonance.ts';
import { HIGHEST_KA } from '../air/endCorrection.ts';
import { loudestPlaceHalfWidths, widerRiseDb } from '../air/loudestPlaceSpread.ts';
import {
  USUAL_CENTRE_STANDARD_UNCERTAINTY_HALF_WIDTHS,
  USUAL_FIRST_RISE_DB,
} from '../marks/usualUncertainties.ts';
import type { SolverMark } from './solution.ts';

/** How far the place that was read may lie from the resonance, as standard uncertainties, m. */
export interface LocationErrors {
  /** Half width of the resonance on the rule. */
  readonly halfWidthM: number;
  /** Of the centre that the bench showed, independent from mark to mark; 0 for a loudest place. */
  readonly centreUncertaintyM: number;
  /** Of the loudest place, the same error for all marks of a setup; 0 for a centre. */
  readonly loudestUncertaintyM: number;
  /** Of the loudest place over the fork alone, dB. */
  readonly riseDb: number;
  /** Whether nobody stated the rise. */
  readonly isRiseAssumed: boolean;
}

/**
 * Errors of one mark's place.
 * @param tube  radius (a usual one where it is unknown), speed in free air, and the walls' attenuation
 */
export function locationErrors(
  mark: SolverMark,
  tube: Pick<ColumnDamping, 'radiusM' | 'speedMps' | 'attenuationNpPerM'>,
): LocationErrors {
  const { ends, frequencyHz, lengthM } = mark;
  const wavelengthM = tube.speedMps / frequencyHz;
  // Theory ends at ka = 1.5; just below it, so that rounding doesn't lead beyond.
  const radiusM = Math.min(tube.radiusM, (0.999 * HIGHEST_KA * wavelengthM) / (2 * Math.PI));
  const halfWidthAt = (columnM: number): number =>
    resonanceWidthM({ ...tube, radiusM, ends, frequencyHz, lengthM: columnM }) / 2;
  const halfWidthM = halfWidthAt(lengthM);
  const firstM = halfWidthAt(ends === 'closed' ? wavelengthM / 4 : wavelengthM / 2);
  const riseDb = mark.riseDb ?? widerRiseDb(USUAL_FIRST_RISE_DB, Math.max(halfWidthM / firstM, 1));
  const isCentre = mark.locatedBy === 'centre';
  const centreHalfWidths =
    mark.centreStandardUncertaintyHalfWidths ?? USUAL_CENTRE_STANDARD_UNCERTAINTY_HALF_WIDTHS;
  return {
    halfWidthM,
    centreUncertaintyM: isCentre ? centreHalfWidths * halfWidthM : 0,
    loudestUncertaintyM: isCentre ? 0 : loudestPlaceHalfWidths(riseDb) * halfWidthM,
    riseDb,
    isRiseAssumed: typeof mark.riseDb !== 'number',
  };
}
