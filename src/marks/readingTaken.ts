import type { LocatedBy } from './mark.ts';
import {
  FOUND_BY_EAR_STANDARD_UNCERTAINTY_M,
  USUAL_LENGTH_STANDARD_UNCERTAINTY_M,
} from './usualUncertainties.ts';

/** How well a length is taken to be read. */
export interface ReadingTaken {
  readonly lengthStandardUncertaintyM: number;
  /** Whether nobody stated it: the lengths' scatter may narrow it, too. */
  readonly isReadingAssumed: boolean;
}

/**
 * How well a length was read: as stated, else what is usual where the bench showed the centre, or the ear found it.
 * @param statedM  standard uncertainty, m; null where nobody stated it
 * @param locatedBy  null where nobody said: by ear
 * @example
 * readingTaken(null, 'loudest') // → { lengthStandardUncertaintyM: 0.0025, isReadingAssumed: true }
 */
export function readingTaken(statedM: number | null, locatedBy: LocatedBy | null): ReadingTaken {
  if (statedM !== null) return { lengthStandardUncertaintyM: statedM, isReadingAssumed: false };
  if (locatedBy === 'centre')
    return { lengthStandardUncertaintyM: USUAL_LENGTH_STANDARD_UNCERTAINTY_M, isReadingAssumed: false };
  return { lengthStandardUncertaintyM: FOUND_BY_EAR_STANDARD_UNCERTAINTY_M, isReadingAssumed: true };
}
