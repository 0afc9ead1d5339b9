/** What is said of a reading of the rule. */
export const reading = {
  /** Both in cm. */
  beyondTube: (reading: string, longest: string) =>
    `${reading} cm is longer than the tube (${longest} cm). If it is right, correct the longest column under Apparatus.`,
};
