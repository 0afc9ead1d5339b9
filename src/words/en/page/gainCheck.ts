/** A gain check's answer: a word, a sentence, and what the experiment keeps of it. */
export const gainAnswer = {
  verdicts: { rewritten: 'Changed', steady: 'Unchanged', 'cannot-tell': 'Listening' },
  details: {
    rewritten: (departureDb: string) =>
      `The level departs from a smooth decay by ${departureDb} dB. Something between microphone and page changes it.`,
    steady: (departureDb: string) =>
      `The fork died away smoothly, within ${departureDb} dB, while somebody talked.`,
  },
  waits: {
    strike: 'Strike the fork once and hold it still, near the microphone.',
    time: (followedS: string) => `Hold still and keep talking: ${followedS} s heard.`,
    talk: (talkS: string) => `Now let somebody talk, as loud as the class does: ${talkS} s of talk heard.`,
    fork: 'The talk drowns the fork. Strike it once more, and hold it nearer to the microphone.',
  },
  kept: {
    steady: (when: string, departureDb: string, limitDb: string, device: string) =>
      `Saved with the experiment: ${when}: unchanged, ${departureDb} dB from a smooth decay (limit ${limitDb} dB), ${device}.`,
    rewritten: (when: string, departureDb: string, limitDb: string, device: string) =>
      `Saved with the experiment: ${when}: changed, ${departureDb} dB from a smooth decay (limit ${limitDb} dB), ${device}.`,
  },
  namelessDevice: 'microphone without a name',
  /** @param number  its place in the list, from 1 */
  microphone: (number: number) => `Microphone ${number}`,
};
