import type { Mark } from './mark.ts';

/**
 * A mark that was told less probable than this may be none. It stands between the limits from which the detector's
 * judgements are sure, 0.88 to 0.92.
 */
const SURE_CONFIDENCE = 0.9;

/** Whether what was heard may well be no resonance, as far as the detector knows. */
export function isUnsure({ evidence }: Pick<Mark, 'evidence'>): boolean {
  return evidence !== null && evidence.confidence < SURE_CONFIDENCE;
}
