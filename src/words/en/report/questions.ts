import { ordinal } from '../grammar.ts';

/** Questions for the report's discussion; `hidden` ones give no number of the result away. */
export const questions = {
  outlier: (cm: string, apartMm: string) =>
    `The mark at ${cm} cm lies ${apartMm} mm away from the others. What may have happened, and how would you find out?`,
  outlierHidden: (cm: string) =>
    `The mark at ${cm} cm lies away from the others. What may have happened, and how would you find out?`,
  largestPart: (source: string) =>
    `The largest part of the uncertainty comes from ${source}. What would you change to halve it?`,
  largestPartHidden:
    'Where does the largest part of the uncertainty come from? What would you change to halve it?',
  /** Whatever follows "comes from". */
  sources: {
    reading: 'reading the lengths',
    fork: 'the fork’s frequency',
    loudest: 'using the loudest place, which lies beside the resonance',
    zero: 'the rule’s zero',
    scale: 'the rule’s divisions',
    end: 'the end correction',
    wall: 'the tube’s wall, which slows the wave',
  },
  endMeasured: (endMm: string, diameterMm: string) =>
    `Your end correction is ${endMm} mm in a tube of ${diameterMm} mm. What would it be in a tube twice as wide, and how would you test that?`,
  endMeasuredHidden:
    'The column acts longer than it is. How do your lengths show it? How does the speed change if you leave it out?',
  oneOrder: (forkHz: string) =>
    `All marks belong to one resonance. What can a second resonance of the ${forkHz} Hz fork tell you that this one can’t?`,
  noTemperature: (speedMps: string) =>
    `No temperature was noted. At which air temperature would the speed be ${speedMps} m/s? Is that likely in your room?`,
  noTemperatureHidden:
    'No temperature was noted. Which air temperature would belong to your speed? Is that likely in your room?',
  apartFromTheory: (differenceMps: string) =>
    `Measured minus predicted speed is ${differenceMps} m/s, more than the uncertainties explain. Which single mistake would cause just this difference?`,
  apartFromTheoryHidden:
    'Compare your speed with the predicted speed. Which single mistake would cause just this difference?',
  nearTheory: (differenceMps: string) =>
    `Measured minus predicted speed is ${differenceMps} m/s, within the uncertainties. Does that prove the theory right? How small a difference could you have found?`,
  nearTheoryHidden:
    'Compare your speed with the predicted speed. How small a difference could you have found?',
  twoPlaces: (oneMps: string, otherMps: string) =>
    `You found ${oneMps} and ${otherMps} m/s in two places. Which errors are the same in both, and what does that mean for their difference?`,
  twoPlacesHidden:
    'You measured in two places. Which errors are the same in both, and what does that mean for the difference of the speeds?',
  nextResonance: (order: number, forkHz: string) =>
    `At which length would you look for the ${ordinal(order)} resonance of the ${forkHz} Hz fork? Say how sure you are.`,
};
