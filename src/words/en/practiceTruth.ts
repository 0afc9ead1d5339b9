/** The practice column's true values beside what was found. */
export const practiceTruth = {
  covered: (trueMps: string, difference: string, percent: string) =>
    `The true speed is ${trueMps} m/s. Your result is off by ${difference} m/s (${percent} %): your uncertainty covers that.`,
  notCovered: (trueMps: string, difference: string, percent: string) =>
    `The true speed is ${trueMps} m/s. Your result is off by ${difference} m/s (${percent} %): more than your uncertainty covers.`,
  fork: (hertz: string) => `The fork’s true frequency is ${hertz} Hz.`,
  /** Why the two lengths of each line differ. */
  whyLoudest:
    'The loudest place lies beside the resonance because the microphone hears the fork, too: both sounds together are loudest a little beside it.',
  /** One typed length, all in cm but the difference. @param mark  its name, like “Mark 3” */
  reading: (mark: string, typed: string, resonance: string, loudest: string, differenceMm: string) =>
    `${mark}: you typed ${typed} cm. The resonance is at ${resonance} cm, the loudest place at ${loudest} cm (${differenceMm} mm).`,
  /** How well it was read. */
  verdicts: {
    resonance: 'Well read, at the resonance.',
    loudest: 'Well read, at the loudest place.',
    between: 'Well read, between the two.',
    'too-long': (millimetres: string) => `You are ${millimetres} mm too long for the resonance.`,
    'too-short': (millimetres: string) => `You are ${millimetres} mm too short for the resonance.`,
  },
};
