import type { ProcessingFlag } from '../../../capture/soundSource.ts';

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
    `Heard but not marked: ${flags}. The sound broke off during the pass, as when noise suppression cuts the tone away: it may have been no resonance.`,
  flag: (seconds: string, riseDb: string) => `at ${seconds} s, rise ${riseDb} dB`,
  maybes:
    'Perhaps a resonance. Slide through it once more: if it is heard again, it becomes a mark. Or keep it, if you heard it too.',
  maybe: (seconds: string, percent: string, reason: string) =>
    `○ at ${seconds} s, ${percent} % sure: ${reason}`,
  keep: 'Keep',
  keepNamed: (seconds: string) => `Keep the resonance at ${seconds} s`,
  letIn: 'Mark it anyway',
  letInNamed: (flag: string) => `Mark the resonance ${flag}`,
  letAllIn: 'Mark all of them',
  toCheck: 'Go to the gain check',
};
