import { laterWords } from '../inUse.ts';
import { fixed, signed, stampedHertz } from '../numbers.ts';

/** A question that these data can answer, as far as it is spoken; the report chooses them. */
export type SpokenQuestion =
  | { readonly code: 'outlier'; readonly lengthM: number; readonly residualM: number }
  | { readonly code: 'largest-part'; readonly source: SpokenSource }
  | { readonly code: 'end-measured'; readonly endM: number; readonly diameterM: number | null }
  | { readonly code: 'one-order'; readonly frequencyHz: number }
  | { readonly code: 'no-temperature'; readonly speedMps: number }
  | { readonly code: 'apart-from-theory' | 'near-theory'; readonly differenceMps: number }
  | { readonly code: 'two-places'; readonly speedsMps: readonly [number, number] }
  | { readonly code: 'next-resonance'; readonly frequencyHz: number; readonly order: number };

/** Where an uncertainty comes from. */
type SpokenSource = 'reading' | 'fork' | 'loudest' | 'zero' | 'scale' | 'end' | 'wall';

/** A question for the discussion. @param isOpen  whether the result is printed: else no number of it is given away */
export function questionWords(question: SpokenQuestion, isOpen: boolean): string {
  const words = laterWords.questions;
  switch (question.code) {
    case 'outlier': {
      const cm = fixed(100 * question.lengthM, 1);
      return isOpen
        ? words.outlier(cm, fixed(1000 * Math.abs(question.residualM), 1))
        : words.outlierHidden(cm);
    }
    case 'largest-part':
      return isOpen ? words.largestPart(words.sources[question.source]) : words.largestPartHidden;
    case 'end-measured':
      return question.diameterM === null || !isOpen
        ? words.endMeasuredHidden
        : words.endMeasured(fixed(1000 * question.endM, 1), fixed(1000 * question.diameterM, 1));
    case 'one-order':
      return words.oneOrder(stampedHertz(question.frequencyHz));
    case 'no-temperature':
      return isOpen ? words.noTemperature(fixed(question.speedMps, 1)) : words.noTemperatureHidden;
    case 'apart-from-theory':
      return isOpen ? words.apartFromTheory(signed(question.differenceMps, 1)) : words.apartFromTheoryHidden;
    case 'near-theory':
      return isOpen ? words.nearTheory(signed(question.differenceMps, 1)) : words.nearTheoryHidden;
    case 'two-places': {
      const [one, other] = question.speedsMps;
      return isOpen ? words.twoPlaces(fixed(one, 1), fixed(other, 1)) : words.twoPlacesHidden;
    }
    case 'next-resonance':
      return words.nextResonance(question.order, stampedHertz(question.frequencyHz));
  }
}
