import { endRatioOfMouth } from '../../air/mouth.ts';
import type { MouthShape } from '../../air/mouth.ts';
import { laterWords } from '../inUse.ts';
import { fixed } from '../numbers.ts';

/** One choice of the mouth. @param mouth  null: not described */
export function mouthChoiceWords(mouth: MouthShape | null): {
  readonly name: string;
  readonly sentence: string;
} {
  const { notDescribed, anyOf, names, shapes } = laterWords.mouthChoice;
  if (mouth === null) return { name: notDescribed, sentence: `${anyOf} ${ratioWords(null)}` };
  return {
    name: names[mouth],
    sentence: mouth === 'ideal' ? shapes.ideal : `${shapes[mouth]} ${ratioWords(mouth)}`,
  };
}

/** What is known of a mouth's end correction before anything was measured, over the inside radius. */
function ratioWords(mouth: MouthShape | null): string {
  const { ratio, standardUncertainty } = endRatioOfMouth(mouth);
  return laterWords.mouthChoice.ratio(fixed(ratio, 2), fixed(standardUncertainty, 2));
}
