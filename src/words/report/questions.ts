import { ordinal } from '../en/grammar.ts';
import { fixed, signed, stampedHertz } from '../numbers.ts';

/** A question that these data can answer, as far as it is spoken; the report chooses them. */
export type SpokenQuestion =
  | { readonly code: 'outlier'; readonly lengthM: number; readonly residualM: number }
  | { readonly code: 'largest-part'; readonly source: keyof typeof SOURCES }
  | { readonly code: 'end-measured'; readonly endM: number; readonly diameterM: number | null }
  | { readonly code: 'one-order'; readonly frequencyHz: number }
  | { readonly code: 'no-temperature'; readonly speedMps: number }
  | { readonly code: 'apart-from-theory' | 'near-theory'; readonly differenceMps: number }
  | { readonly code: 'two-places'; readonly speedsMps: readonly [number, number] }
  | { readonly code: 'next-resonance'; readonly frequencyHz: number; readonly order: number };

const SOURCES = {
  reading: 'reading the lengths',
  fork: 'the fork’s pitch',
  loudest: 'the loudest place, which lies beside the resonance',
  zero: 'the rule’s zero',
  scale: 'the rule’s divisions',
  end: 'the end correction',
  wall: 'the walls’ slowing of the wave',
} as const;

/** A question for the discussion. @param isOpen  whether the result is printed: else no number of it is given away */
export function questionWords(question: SpokenQuestion, isOpen: boolean): string {
  switch (question.code) {
    case 'outlier':
      return `The mark at ${fixed(100 * question.lengthM, 1)} cm lies apart from the others${isOpen ? ` by ${fixed(1000 * Math.abs(question.residualM), 1)} mm` : ''}. What may have happened, and how would you find out?`;
    case 'largest-part':
      return isOpen
        ? `Most of the uncertainty comes from ${SOURCES[question.source]}. What would you change at the bench to make it half as large?`
        : 'Where does most of the uncertainty come from, and what would you change at the bench to make it half as large?';
    case 'end-measured':
      return question.diameterM === null || !isOpen
        ? 'The column acts longer than it is. How do your lengths show it, and what becomes of the speed if you leave it out?'
        : `Your end correction is ${fixed(1000 * question.endM, 1)} mm in a tube of ${fixed(1000 * question.diameterM, 1)} mm. What would it be in a tube twice as wide, and how would you test that?`;
    case 'one-order':
      return `All marks are of one resonance. What does a second one of the ${stampedHertz(question.frequencyHz)} Hz fork tell you that this one can’t?`;
    case 'no-temperature':
      return isOpen
        ? `No temperature was noted. Which temperature of the air would belong to ${fixed(question.speedMps, 1)} m/s, and is that likely in your room?`
        : 'No temperature was noted. Which temperature of the air would belong to your speed, and is that likely in your room?';
    case 'apart-from-theory':
      return isOpen
        ? `Measured minus theory is ${signed(question.differenceMps, 1)} m/s, more than the uncertainties explain. Which single mistake would make just this difference?`
        : 'Compare your speed with theory’s. Which single mistake would make just this difference?';
    case 'near-theory':
      return isOpen
        ? `Measured minus theory is ${signed(question.differenceMps, 1)} m/s, within the uncertainties. Does that prove theory right? How small a deviation could you have found?`
        : 'Compare your speed with theory’s. How small a deviation could you have found?';
    case 'two-places':
      return isOpen
        ? `You found ${fixed(question.speedsMps[0], 1)} and ${fixed(question.speedsMps[1], 1)} m/s in two places. Which of the errors are common to both, and what does that mean for their difference?`
        : 'You measured in two places. Which of the errors are common to both, and what does that mean for the difference of the speeds?';
    case 'next-resonance':
      return `At which length would you look for the ${ordinal(question.order)} resonance of the ${stampedHertz(question.frequencyHz)} Hz fork? Say how sure you are.`;
  }
}
