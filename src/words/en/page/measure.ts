import { ordinal, plural } from '../grammar.ts';

/** The list of marks. */
export const marks = {
  heading: 'Marks',
  undo: (step: string | null) => (step === null ? 'Undo' : `Undo: ${step}`),
  redo: 'Redo',
  newMark: 'New mark',
  newLength: 'Length of a new mark',
  add: 'Add mark',
  waiting: (count: number) =>
    count === 1
      ? '1 mark needs its length. Type it and press Enter.'
      : `${count} marks need their lengths. Type one and press Enter to go to the next.`,
  none: 'No marks yet. Each resonance that is found makes one. You can also press M, or type a length over the tube.',
  deleted: (count: number) => `Deleted marks (${count})`,
  bringBack: 'Bring back',
  atLength: (centimetres: string) => `at ${centimetres} cm`,
  bringBackAtLength: (centimetres: string) => `Bring back the mark at ${centimetres} cm`,
  withoutLength: 'without a length',
  bringBackWithoutLength: 'Bring back the mark without a length',
};

/** One mark, by its number in the notebook. */
export const markRow = {
  mark: (number: number) => `Mark ${number}`,
  length: (number: number) => `Length of mark ${number}`,
  waits: 'type its length',
  /** Its field stands over the tube. */
  overTube: 'Type it over the tube',
  choose: 'Change',
  chooseNamed: (number: number) => `Change mark ${number}`,
  fork: (number: number) => `Fork of mark ${number}`,
  column: (number: number) => `Column of mark ${number}`,
  place: (number: number) => `Place of mark ${number}`,
  alsoChange: (count: number) =>
    `Also change the other ${plural(count, 'mark', `${count} marks`)} of the same kind`,
  unsure: (percent: string) =>
    `Only ${percent} % sure to be a resonance: slide through it again before you trust it.`,
  /** In which strike of the fork, and its how-manieth resonance there. */
  pass: (strike: number, pass: number) => `strike ${strike}, ${ordinal(pass)} pass`,
  untested: (missing: 1 | 2) =>
    missing === 1 ? 'one more resonance would test it' : 'two more resonances would test it',
  notSolved: 'not solved yet',
  leftOut: 'left out',
  outlier: (cause: string) => `Outlier: ${cause}`,
  order: (number: number) => `Order of mark ${number}`,
  autoOrder: 'order: auto',
  ordinal: (order: number) => ordinal(order),
  locatedBy: (number: number) => `How the length of mark ${number} was found`,
  atCentre: 'at the centre',
  atLoudest: 'at the loudest place',
  leaveOut: 'Leave out',
  leaveOutNamed: (number: number) => `Leave mark ${number} out of the fit`,
  delete: 'Delete',
  deleteNamed: (number: number) => `Delete mark ${number}`,
  again: (evidence: string) => `Repeat: ${evidence}`,
  separate: 'Separate',
  separateNamed: (number: number) => `Separate the repeat from mark ${number}`,
  sameAsOther: 'Same as…',
  sameAsNamed: (number: number) => `Mark with the same resonance as mark ${number}`,
  same: (number: number) => `Same as ${number}`,
  sameNamed: (number: number, other: number) => `Mark ${number} is the same resonance as mark ${other}`,
};

/** The speed of sound at the present place. */
export const result = {
  region: 'Speed of sound',
  heading: 'Details of the result',
  spoken: (speed: string) => `Speed of sound: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

/** What is doubtful about marks and sound. */
export const doubts = { heading: 'Warnings' };
