import { plural } from '../grammar.ts';

/** What stands on the strip and beside it. */
export const stripLabels = {
  nothing: 'Nothing heard yet.',
  alternative: (words: string) => `Level of the last minute. ${words}`,
  empty: 'The last minute of sound shows here while this page listens.',
  tone: 'tone at the fork’s frequency',
  room: 'room noise at the same frequency',
  all: 'all sound',
  timeTick: (seconds: string) => `${seconds} s`,
  levelTick: (levelDb: string) => `${levelDb} dB`,
};

/** The strip in words. */
export const stripSpoken = {
  strikes: (strikes: number) => plural(strikes, 'One strike heard.', `${strikes} strikes heard.`),
  noResonance: 'No resonance found.',
  /** @param resonances  as below, a list */
  resonances: (resonances: string) => `Resonances: ${resonances}.`,
  resonance: (seconds: string, riseDb: string) => `at ${seconds} s, rise ${riseDb} dB`,
  perhaps: (seconds: string, riseDb: string) => `perhaps at ${seconds} s, rise ${riseDb} dB`,
};
