/*
 * What is taken where nothing is stated: one set for new experiments, for tables that come in and for the command line,
 * so that the same lengths give the same result everywhere.
 */

/**
 * Standard uncertainty of one length, m: a rule read to a millimetre, and the resonance found by its loudest place, which
 * lies some tenths of a millimetre to a few millimetres beside the centre. A judgement.
 */
export const USUAL_LENGTH_STANDARD_UNCERTAINTY_M = 0.001;

/** A fork's pitch is within this part of its stamp: what makers state (from memory, no source). */
export const STAMP_TOLERANCE = 0.005;

/**
 * Standard uncertainty of a stamped pitch, Hz: anywhere within the maker's tolerance is as likely, a rectangle.
 * @see JCGM 100:2008, 4.3.7
 */
export function stampStandardUncertaintyHz(nominalHz: number): number {
  return (STAMP_TOLERANCE * nominalHz) / Math.sqrt(3);
}
