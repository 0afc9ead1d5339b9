/** The practice column's true values beside what was found. */
export const practiceTruth = {
  speed: (mps: string) => `The true speed is ${mps} m/s.`,
  /** @param off  with its sign */
  covered: (off: string, percent: string) =>
    `Your result is off by ${off} m/s (${percent} %), which its uncertainty covers.`,
  notCovered: (off: string, percent: string) =>
    `Your result is off by ${off} m/s (${percent} %), more than its uncertainty says.`,
  fork: (hertz: string) => `The fork’s true frequency is ${hertz} Hz.`,
  whyLoudest:
    'The loudest place is not quite at the resonance: the microphone hears the fork itself, too, and fork and column together are loudest a little beside it.',
};

/** One typed length beside its resonance and the loudest place. */
export const practiceReading = {
  typed: (mark: string, centimetres: string) => `${mark}: you typed ${centimetres} cm.`,
  loudestLonger: (resonance: string, loudest: string, apartMm: string) =>
    `The column resonates at ${resonance} cm and is loudest at ${loudest} cm, ${apartMm} mm longer.`,
  loudestShorter: (resonance: string, loudest: string, apartMm: string) =>
    `The column resonates at ${resonance} cm and is loudest at ${loudest} cm, ${apartMm} mm shorter.`,
  atResonance: 'Read well, at the resonance.',
  atLoudest: 'Read well, at the loudest place.',
  between: 'Read well, between the two.',
  tooLong: (millimetres: string) => `Your length is ${millimetres} mm too long for the resonance.`,
  tooShort: (millimetres: string) => `Your length is ${millimetres} mm too short for the resonance.`,
};
