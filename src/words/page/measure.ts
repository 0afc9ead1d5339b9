import { fixed, ordinal, plural } from '../numbers.ts';
import type { RoundedPair } from '../numbers.ts';
import { stepWords } from '../steps.ts';

/** The list of marks. */
export const marksWords = {
  heading: 'Marks',
  undo: (step: string | null) => (step === null ? 'Undo' : `Undo ${stepWords(step)}`),
  redo: 'Redo',
  newLength: 'Length of a new mark',
  add: 'Add mark',
  waiting: (count: number) =>
    `${count} ${plural(count, 'mark waits', 'marks wait')} for a length. Enter goes on to the next.`,
  none: 'No marks yet. A flagged resonance makes one; so does the key M, or a length typed above.',
  deleted: (count: number) => `Deleted marks (${count})`,
  bringBack: 'Bring back',
  bringBackNamed: (mark: string) => `Bring back the mark ${mark}`,
  /** @param lengthM  null where it was never typed */
  deletedMark: (lengthM: number | null) =>
    lengthM === null ? 'without length' : `at ${fixed(lengthM * 100, 2)} cm`,
} as const;

/** One mark, by its number in the notebook. */
export const markRowWords = {
  mark: (number: number) => `Mark ${number}`,
  length: (number: number) => `Length of mark ${number}`,
  waits: 'waits for its length',
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
} as const;

/** The speed of sound at the present place. */
export const resultWords = {
  region: 'Speed of sound',
  heading: 'Speed of sound in free air',
  none: '—',
  unit: 'm/s',
  uncertainty: (pair: RoundedPair) => `± ${pair.uncertainty} m/s`,
  lead: 'It appears with the first length and grows more certain with each mark.',
} as const;

/** What is doubtful about marks and sound. */
export const doubtsWords = { heading: 'To look at' } as const;
