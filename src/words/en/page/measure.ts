import { ordinal, plural } from '../grammar.ts';
import { fixed } from '../../numbers.ts';

/** The list of marks. */
export const marks = {
  heading: 'Marks',
  undo: (step: string | null) => (step === null ? 'Undo' : `Undo: ${step}`),
  redo: 'Redo',
  newMark: 'New mark',
  newLength: 'Length of a new mark',
  add: 'Add mark',
  waiting: (count: number) =>
    `${count} ${plural(count, 'mark waits', 'marks wait')} for a length. Enter goes on to the next.`,
  none: 'No marks yet. A resonance that is found makes one; so does the key M, or a length typed over the tube.',
  deleted: (count: number) => `Deleted marks (${count})`,
  bringBack: 'Bring back',
  bringBackNamed: (mark: string) => `Bring back the mark ${mark}`,
  /** @param lengthM  null where it was never typed */
  deletedMark: (lengthM: number | null) =>
    lengthM === null ? 'without length' : `at ${fixed(lengthM * 100, 2)} cm`,
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
  unsure: (confidence: number) =>
    `Only ${fixed(100 * confidence, 0)} % sure to be a resonance: pass it again before you trust it.`,
  /** In which ringing of the fork, and its how-manieth resonance there. */
  pass: (strike: number, pass: number) => `strike ${strike}, ${ordinal(pass)} pass`,
  untested: (missing: 1 | 2) =>
    missing === 1 ? 'a third resonance would test it' : 'two more resonances would test it',
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
  again: (evidence: string) => `again ${evidence}`,
  separate: 'Separate',
  separateNamed: (number: number) => `Make the repeat of mark ${number} a mark of its own`,
  sameAsOther: 'Same as…',
  sameAsNamed: (number: number) => `Another mark that has the resonance of mark ${number}`,
  same: (number: number) => `Same as ${number}`,
  sameNamed: (number: number, other: number) => `Mark ${number} is the same resonance as mark ${other}`,
};

/** The speed of sound at the present place. */
export const result = {
  region: 'Speed of sound',
  heading: 'What belongs to the speed',
  spoken: (speed: string) => `Speed of sound: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

/** What is doubtful about marks and sound. */
export const doubts = { heading: 'To look at' };
