import type { Mark } from './mark.ts';

/** Flags that are told less probable than this are maybes: one in ten or more of them is no resonance. */
const SURE_CONFIDENCE = 0.9;

/** Whether what was heard may well be no resonance, as far as the detector knows. */
export function isUnsure({ evidence }: Pick<Mark, 'evidence'>): boolean {
  return evidence !== null && evidence.confidence < SURE_CONFIDENCE;
}
