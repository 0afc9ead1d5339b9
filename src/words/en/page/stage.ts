import { plural } from '../grammar.ts';
import type { Stopper } from '../../../notebook/experiment.ts';

/** Where the sound comes from. */
export const source = {
  legend: 'Sound from',
  names: { practice: 'Practice column', microphone: 'Microphone', recording: 'Recording' },
  listen: 'Listen',
  stop: 'Stop',
  open: 'Open a recording',
  file: 'Recording to open',
  progress: 'Listening to the recording',
  rate: (kilohertz: string, processing: string) => `${kilohertz} kHz, ${processing}`,
  /** Whether the browser changes the sound before it comes. */
  processing: {
    on: 'changed by the browser',
    unknown: 'perhaps changed by the browser',
    off: 'unchanged by the browser',
  },
};

/** What is measured now. */
export const now = {
  legend: 'Measured now',
  fork: 'Fork',
  hertz: (frequency: string) => `${frequency} Hz`,
  addFork: 'Add a fork…',
  alsoChange: (marks: number) =>
    plural(marks, 'Also change the mark made so far', `Also change the ${marks} marks made so far`),
  column: 'Column',
  place: 'Place',
};

/** What is drawn in the column. */
export const drawn = {
  wave: 'Wave',
  waveNamed: 'Wave drawn',
  waves: { pressure: 'pressure', displacement: 'displacement', none: 'nothing' },
  expected: 'Expected lengths',
};

/** The level above the room, read from afar. */
export const readout = {
  none: '–',
  unit: 'dB above the room',
  noneSpoken: 'Rise above the room: no tone heard',
  levelSpoken: (riseDb: string) => `Rise above the room: ${riseDb} decibels`,
  check: (sign: string, verdict: string) => `This length: ${sign} ${verdict}`,
};

/** The way back to the resonance. */
export const wayBack = {
  idle: 'Back to the resonance',
  here: 'Here.',
  holdStill: 'Hold still and read the rule.',
  atMaximum: 'At the loudest place.',
  toGo: 'mm to go',
  hereLarge: 'Here',
  nothingToGo: 'read the rule',
  /** What to do to a column that is too long, and to one that is too short. */
  moves: {
    piston: { tooLong: 'push in', tooShort: 'pull out' },
    dipped: { tooLong: 'lower the tube', tooShort: 'raise the tube' },
    filled: { tooLong: 'raise the water', tooShort: 'lower the water' },
  } satisfies Readonly<Record<Stopper, { readonly tooLong: string; readonly tooShort: string }>>,
  off: (side: string, move: string) => `${side}: ${move}`,
  heardAgo: (seconds: string) => `(${seconds} s ago)`,
  lost: 'Can’t tell where it is. Slide past it once more, then come back from both sides.',
  byLevel: 'Back to the loudest place: pass it from both sides.',
  tooShort: 'too short',
  tooLong: 'too long',
  spoken: {
    here: 'Here. Hold still.',
    atMaximum: 'At the loudest place.',
    tooLong: (move: string) => `Too long: ${move}.`,
    tooLongBy: (mm: string, move: string) => `Too long by ${mm} mm: ${move}.`,
    tooShort: (move: string) => `Too short: ${move}.`,
    tooShortBy: (mm: string, move: string) => `Too short by ${mm} mm: ${move}.`,
    lost: 'Can’t tell where it is. Slide past it once more.',
    close: 'Close to the loudest place.',
    away: 'Away from the loudest place.',
  },
};

/** A task that a lesson sets. */
export const task = { task: 'Task:' };
