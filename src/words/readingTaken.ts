import {
  FOUND_BY_EAR_STANDARD_UNCERTAINTY_M,
  USUAL_LENGTH_STANDARD_UNCERTAINTY_M,
} from '../marks/usualUncertainties.ts';
import { short } from './numbers.ts';

const BY_EAR = short(1000 * FOUND_BY_EAR_STANDARD_UNCERTAINTY_M);
const AT_CENTRE = short(1000 * USUAL_LENGTH_STANDARD_UNCERTAINTY_M);

/** What is taken for a length whose uncertainty nobody stated. */
export const READING_TAKEN = `${BY_EAR} mm is taken for places found by ear, ${AT_CENTRE} mm where the bench showed the centre; from three lengths on their own scatter corrects it`;
