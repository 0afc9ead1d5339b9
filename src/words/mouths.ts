import type { MouthShape } from '../air/mouth.ts';
import { laterWords, words } from './inUse.ts';

/** A mouth in the report's list of apparatus. @param mouth  null: nobody described it */
export function mouthWords(mouth: MouthShape | null): string {
  const { notDescribed, ideal, mouth: named } = laterWords.mouthFacts;
  if (mouth === null) return notDescribed;
  return mouth === 'ideal' ? ideal : named(words.mouthNames[mouth]);
}
