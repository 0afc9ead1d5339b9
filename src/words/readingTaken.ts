import {
  FOUND_BY_EAR_STANDARD_UNCERTAINTY_M,
  USUAL_LENGTH_STANDARD_UNCERTAINTY_M,
} from '../marks/usualUncertainties.ts';
import { words } from './inUse.ts';
import { short } from './numbers.ts';

/** What is taken for a length whose uncertainty nobody stated. */
export function readingTakenWords(): string {
  return words.readingTaken(
    short(1000 * FOUND_BY_EAR_STANDARD_UNCERTAINTY_M),
    short(1000 * USUAL_LENGTH_STANDARD_UNCERTAINTY_M),
  );
}
