import { counted, plural } from '../grammar.ts';
import { fixed, megabytes } from '../../numbers.ts';
import type { PartedText } from '../../partedText.ts';

export const records = {
  bringIn: 'Bring in',
  bringInLead: 'Or drop files anywhere on the page, or paste a table outside any field.',
  toClass: { before: 'Many groups’ files: ', part: 'open the class view', after: '' } satisfies PartedText,
  report: 'Lab report',
  reportLead:
    'Apparatus, method, marks, plots, working, budget, result and comparison on a few pages, with room for names and discussion.',
  openReport: 'Open the report',
};

export const experiments = {
  heading: 'Experiments',
  newSame: 'New, same apparatus',
  newPlain: 'New from scratch',
  noList: (why: string) => `The list can’t be read now: ${why}`,
  none: 'Nothing is saved yet. The first change makes the first entry.',
  deleted: (count: number) => `Deleted experiments (${count})`,
  newTitle: 'New title',
  leaveTitle: 'Cancel',
  open: 'Open',
  openNamed: (title: string) => `Open ${title}`,
  rename: 'Rename',
  renameNamed: (title: string) => `Rename ${title}`,
  duplicate: 'Duplicate',
  duplicateNamed: (title: string) => `Duplicate ${title}`,
  delete: 'Delete',
  deleteNamed: (title: string) => `Delete ${title}`,
  bringBack: 'Bring back',
  bringBackNamed: (title: string) => `Bring back ${title}`,
  erase: 'Erase for good…',
  eraseNamed: (title: string) => `Erase ${title} for good`,
  askErase: (title: string) => ({
    heading: `Erase “${title}” for good?`,
    message:
      'Its marks, level traces, notes, undo steps and saved sound are erased from this browser and can’t come back.',
    no: 'Keep it',
    yes: 'Erase it',
  }),
  /** What the list says of an experiment. */
  counts: (marks: number, places: number) => `${counted(marks, 'mark')}, ${counted(places, 'place')}`,
  openNow: 'open now',
  unreadable: 'A record that can’t be read',
  saveUnreadable: 'Save it as it is',
  noFile: 'This record can’t be saved as a file. It stays as it is.',
  notDone: (why: string) => `That didn’t work; nothing was changed. ${why}`,
};

export const files = {
  heading: 'This experiment',
  title: 'Title',
  group: 'Group',
  className: 'Class',
  note: 'Note',
  saved: 'Saved on this device as you work. Sound and marks never leave it by themselves.',
  notSaved: (why: string) => `Not saved on this device (${why}). Save the JSON file before you leave.`,
  save: 'Save all as JSON',
  form: {
    before: 'The JSON file holds everything; its form is written down in a ',
    part: 'JSON Schema',
    after: '.',
  } satisfies PartedText,
};

export const tables = {
  heading: 'Tables',
  form: 'CSV for a spreadsheet that reads',
  forms: { point: '15.8 (comma between cells)', comma: '15,8 (semicolon between cells)' },
  lead: 'For spreadsheets and documents, all digits, units in the headings. Lengths have the rule’s zero offset already taken off.',
  csv: 'CSV',
  copy: 'Copy',
  copied: (name: string, rows: number) => `${name}: ${counted(rows, 'row')} copied, ready to paste.`,
};

/** Each table by what its file is called: its own name, and those of its two buttons. */
export const tableKinds = {
  marks: { name: 'Marks', save: 'Save marks as CSV', copy: 'Copy marks as a table' },
  fit: {
    name: 'Fit, mark by mark',
    save: 'Save fit, mark by mark as CSV',
    copy: 'Copy fit, mark by mark as a table',
  },
  result: { name: 'Result', save: 'Save result as CSV', copy: 'Copy result as a table' },
  budget: {
    name: 'Uncertainty budget',
    save: 'Save uncertainty budget as CSV',
    copy: 'Copy uncertainty budget as a table',
  },
  trace: {
    name: 'Level trace around the marks',
    save: 'Save level trace around the marks as CSV',
    copy: 'Copy level trace around the marks as a table',
  },
};

export const sounds = {
  heading: 'Saved sound',
  keep: 'Save the sound of each strike from now on',
  lead: (usedBytes: number, limitBytes: number) =>
    `Off each time the page is opened, because voices in the room are recorded too. It stays on this device. All experiments use ${megabytes(usedBytes)} of ${megabytes(limitBytes)}.`,
  again:
    '“Listen again” analyses a sound with the fork chosen now and replaces the marks found in it. Undo brings the old ones back.',
  /** Numbers of the marks that were found in a sound. */
  marks: (count: number, numbers: string) => `${plural(count, 'mark')} ${numbers}`,
  save: 'Save as WAV',
  saveNamed: (number: number) => `Save sound ${number} as WAV`,
  listen: 'Listen again',
  listenNamed: (number: number) => `Listen to sound ${number} again`,
  erase: 'Erase…',
  eraseNamed: (number: number) => `Erase sound ${number}`,
  askErase: (number: number, lengthS: number) => ({
    heading: `Erase sound ${number}?`,
    message: `${fixed(lengthS, 1)} s of sound are erased from this browser and can’t come back. The marks stay. Save it as WAV first if you still need it.`,
    no: 'Keep it',
    yes: 'Erase it',
  }),
  notRead: (why: string) => `This sound can’t be read: ${why}`,
  notErased: (why: string) => `This sound can’t be erased: ${why}`,
};

export const stored = {
  heading: 'Saved on this device',
  lead: 'Experiments with their marks, level traces, notes and undo steps; sound only where you asked for it; your settings; what you typed and haven’t entered yet; and a copy of this site, so that it works offline. All of it stays in this browser: nothing is sent anywhere.',
  inAll: (bytes: number) => `${megabytes(bytes)} in all, by the browser’s count.`,
  promised: 'The browser has promised to keep it until you erase it.',
  notPromised:
    'The browser may delete it when space runs short or when this page isn’t used for a long time.',
  askToKeep: 'Ask the browser to keep it',
  kept: 'The browser keeps your experiments until you erase them.',
  notKept:
    'The browser didn’t agree to keep your data. Save files of anything important; installing this page may help.',
  erase: 'Erase everything…',
  askErase: {
    heading: 'Erase everything that is saved here?',
    message:
      'All experiments, deleted ones too, and all saved sound are erased from this browser and can’t come back. First save files of what you still need.',
    no: 'Keep everything',
    yes: 'Erase everything',
  },
  notErased: (why: string) => `Not everything could be erased: ${why}`,
  older:
    'Another copy of this page at this site has saved older experiments in this browser. Open that copy to see them.',
  olderAt: (path: string): PartedText => ({
    before: 'Another copy of this page at this site has saved older experiments in this browser: ',
    part: `open ${path}`,
    after: '',
  }),
};
