import type { Mark } from './mark.ts';

/** Flags that are told less probable than this are maybes, nearly: each judgement has a limit of its own, 0.82 to 0.92. */
const SURE_CONFIDENCE = 0.87;

/** Whether what was heard may well be no resonance, as far as the detector knows. */
export function isUnsure({ evidence }: Pick<Mark, 'evidence'>): boolean {
  return evidence !== null && evidence.confidence < SURE_CONFIDENCE;
}
