/**
 * Departure up to which a level counts as left alone, and from which as rewritten, dB. On generated recordings
 * that went through a browser (`npm run bench:capture`) raw ones stay below the first, processed ones above the second.
 */
export const STEADY_DB = 0.45;
export const REWRITTEN_DB = 0.9;
