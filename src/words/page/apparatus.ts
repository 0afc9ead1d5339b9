import type { MouthShape } from '../../air/mouth.ts';
import { laterWords } from '../inUse.ts';
import { mouthRatioWords } from '../mouths.ts';

/** One choice of the mouth. @param mouth  null: not described */
export function mouthChoiceWords(mouth: MouthShape | null): {
  readonly name: string;
  readonly sentence: string;
} {
  const { notDescribed, anyOf, names, shapes } = laterWords.mouthChoice;
  if (mouth === null) return { name: notDescribed, sentence: `${anyOf} ${mouthRatioWords(null)}.` };
  return {
    name: names[mouth],
    sentence: mouth === 'ideal' ? shapes.ideal : `${shapes[mouth]} ${mouthRatioWords(mouth)}.`,
  };
}
