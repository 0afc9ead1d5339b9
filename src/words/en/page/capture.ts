import type { ProcessingFlag } from '../../../capture/soundSource.ts';
import { fixed } from '../../numbers.ts';

export const capture = {
  ended: 'Listening ended',
  notListening: 'Not listening.',
  held: 'Listening is paused',
  paused: 'Paused.',
  again: 'Start again',
  ownTab: 'Open in a tab of its own',
  help: 'Help with the microphone',
};

/** What a browser says of a step that rewrites the level. */
export const processingFlag = {
  on: 'on',
  off: 'off',
  unknown: 'unknown',
} satisfies Readonly<Record<ProcessingFlag, string>>;

export const trustPart = {
  name: 'Can the level be trusted?',
  doubtful: 'The level is in doubt.',
  unproven: 'Not checked yet.',
  withheld: (flags: number) =>
    `Heard but not marked: ${flags}. The sound broke off in the passage, as when noise suppression cuts the tone away: it may have been no resonance.`,
  flag: (timeS: number, riseDb: number) => `at ${fixed(timeS, 1)} s, rise ${fixed(riseDb, 0)} dB`,
  maybes:
    'Perhaps a resonance. Slide through it once more: if it is heard again, it becomes a mark. Or keep it, if you heard it too.',
  maybe: (timeS: number, probability: number, reason: string) =>
    `○ at ${fixed(timeS, 1)} s, ${fixed(100 * probability, 0)} % sure: ${reason}`,
  keep: 'Keep',
  keepNamed: (timeS: number) => `Keep the resonance at ${fixed(timeS, 1)} s`,
  letIn: 'Mark it all the same',
  letInNamed: (flag: string) => `Mark the resonance ${flag}`,
  letAllIn: 'Mark all of them',
  toCheck: 'Go to the gain check',
};
