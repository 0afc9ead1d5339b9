/** Why a group's result lies off its class's. A mark comes by its name, like “Mark 3”. */
export const groupReason = {
  otherFork: (fittingHertz: string, notedHertz: string) =>
    `Its lengths fit a ${fittingHertz} Hz fork, but ${notedHertz} Hz is noted. Was it another fork?`,
  allLong: (centimetres: string) =>
    `If the class’s speed is right, all its lengths are about ${centimetres} cm too long.`,
  allShort: (centimetres: string) =>
    `If the class’s speed is right, all its lengths are about ${centimetres} cm too short.`,
  /** What to check then; `mixed` where the marks are of both kinds of column. */
  checkZero: {
    closed: 'Is the rule’s zero at the tube’s closed end? If not, enter the zero offset.',
    open: 'Is the rule’s zero at the tube’s other end? If not, enter the zero offset.',
    mixed: 'Is the rule’s zero at the end of the column? If not, enter the zero offset.',
  },
  markOff: (mark: string, centimetres: string, cause: string) => `${mark} (${centimetres} cm): ${cause}`,
  allLonger: (percent: string) =>
    `Its lengths agree with each other, but all are ${percent} % too long for the class’s speed. Check the fork’s frequency, the rule and the temperature.`,
  allShorter: (percent: string) =>
    `Its lengths agree with each other, but all are ${percent} % too short for the class’s speed. Check the fork’s frequency, the rule and the temperature.`,
};
