import { fixed } from '../../numbers.ts';

/** What stands on the strip and beside it. */
export const stripLabels = {
  nothing: 'Nothing heard yet.',
  alternative: (words: string) => `Level of the last minute. ${words}`,
  empty: 'The last minute of sound shows here while the bench listens.',
  tone: 'tone at the fork’s pitch',
  room: 'room at the same pitch',
  all: 'everything',
  timeTick: (timeS: number) => `${fixed(timeS, 0)} s`,
  levelTick: (levelDb: number) => `${fixed(levelDb, 0)} dB`,
  flag: (markNumber: number, isUnsure: boolean) => `${markNumber}${isUnsure ? '?' : ''}`,
};
