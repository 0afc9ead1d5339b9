import type { Mark } from './mark.ts';

/** Real passages are nearly always surer; a false one was met at 97 %. */
const SURE_CONFIDENCE = 0.98;

/** Whether what was heard may well be no resonance, as far as the detector knows. */
export function isUnsure({ evidence }: Pick<Mark, 'evidence'>): boolean {
  return evidence !== null && evidence.confidence < SURE_CONFIDENCE;
}
