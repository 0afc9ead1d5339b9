/*
 * What is taken where nothing is stated: one set for new experiments, for tables that come in and for the command line,
 * so that the same lengths give the same result everywhere.
 */

/**
 * Standard uncertainty of one length, m: a rule read to a millimetre, and the hand that stops near the place it looks
 * for. Where that place lies about the resonance comes on top. A judgement.
 */
export const USUAL_LENGTH_STANDARD_UNCERTAINTY_M = 0.001;

/**
 * Standard uncertainty of a length in a table that doesn't state any, found by ear, m: hands stop some millimetres beside
 * the place they look for. A judgement; the lengths' own scatter corrects it.
 */
export const FOUND_BY_EAR_STANDARD_UNCERTAINTY_M = 0.0025;

/** Of a place that the bench showed as the resonance's centre, half widths: 0.1 to 0.2 in simulated passes. */
export const USUAL_CENTRE_STANDARD_UNCERTAINTY_HALF_WIDTHS = 0.15;

/**
 * Standard uncertainty of a place that the bench showed as the centre, half widths. The fit of a pass knows its own
 * scatter and not what all passes have in common, so it is never taken for better than what is usual.
 * @param fittedHalfWidths  what the pass's fit says, > 0; null where it isn't known
 * @example
 * centreStandardUncertaintyHalfWidths(0.4) // → 0.4
 */
export function centreStandardUncertaintyHalfWidths(fittedHalfWidths: number | null): number {
  const usual = USUAL_CENTRE_STANDARD_UNCERTAINTY_HALF_WIDTHS;
  return Math.max(fittedHalfWidths ?? usual, usual);
}

/**
 * How much louder than the fork alone the first resonance's loudest place is where nobody stated it, dB; further ones
 * rise less. The middle of what soundings show, a judgement.
 */
export const USUAL_FIRST_RISE_DB = 10;

/** A fork's pitch is within this part of its stamp: what makers state (from memory, no source). */
export const STAMP_TOLERANCE = 0.005;

/**
 * Standard uncertainty of a stamped pitch, Hz: anywhere within the maker's tolerance is as likely, a rectangle.
 * @see JCGM 100:2008, 4.3.7
 */
export function stampStandardUncertaintyHz(nominalHz: number): number {
  return (STAMP_TOLERANCE * nominalHz) / Math.sqrt(3);
}
