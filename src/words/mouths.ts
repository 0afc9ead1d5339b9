import { endRatioOfMouth } from '../air/mouth.ts';
import type { MouthShape } from '../air/mouth.ts';
import { words } from './inUse.ts';
import { fixed } from './numbers.ts';

/** What is known of a mouth's end correction before anything was measured, over the inside radius. */
export function mouthRatioWords(mouth: MouthShape | null): string {
  const { ratio, standardUncertainty } = endRatioOfMouth(mouth);
  return `${fixed(ratio, 2)} ± ${fixed(standardUncertainty, 2)} radii`;
}

/** A mouth in the report's list of apparatus. @param mouth  null: nobody described it */
export function mouthWords(mouth: MouthShape | null): string {
  if (mouth === null) return 'mouth not described';
  return mouth === 'ideal' ? 'no end correction, as in exercises' : `mouth: ${words.mouthNames[mouth]}`;
}
