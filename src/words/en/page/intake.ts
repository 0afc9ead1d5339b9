import { counted } from '../grammar.ts';
import { megabytes } from '../../numbers.ts';

export const intakePage = {
  heading: 'What came in',
  files: 'Files',
  toClass: 'Take into the class view',
  add: 'Add to this experiment',
  openOne: 'Open as a new experiment',
  openEach: 'Open each as an experiment',
  listen: 'Listen to the recordings',
  cancel: 'Cancel',
  close: 'Close without changes',
  tooMany: (files: number, most: number) => `${files} files at once are too many: ${most} are possible.`,
  tooLarge: (mostBytes: number) =>
    `These files are more than ${megabytes(mostBytes)} together: open them in parts.`,
  opened: (title: string) =>
    `“${title}” is open. What was open before is in the list under Records, or a step back with Undo.`,
  /** After a person chose to stay with what is open. @param files  that were to be opened, more than one */
  leftClosed: (files: number) => `${files} files were not opened.`,
};

/** What came in from one file. The file's name and a colon go before it. */
export const intakeContent = {
  experiment: (title: string, marks: number) => `experiment “${title}”, ${counted(marks, 'mark')}`,
  table: (rows: number) => `table, ${counted(rows, 'row')} of marks`,
  results: (results: number) => `table, ${counted(results, 'result')}`,
  recording: 'recording',
  /** @param content  one of these */
  whole: (content: string) => `${content}.`,
  inPart: (content: string, faults: number) => `${content}; ${counted(faults, 'fault')}.`,
  unusable: 'can’t be used.',
  ask: (content: string) => `Use only the part without faults: ${content}`,
  /** @param message  what is wrong there */
  inRow: (row: number, message: string) => `row ${row}: ${message}`,
  /** @param field  a column, or the way to a field of a JSON file */
  inField: (field: string, message: string) => `${field}: ${message}`,
  inRowAndField: (row: number, field: string, message: string) => `row ${row}, ${field}: ${message}`,
  more: (faults: number) => `and ${faults} more.`,
};

/** How much of several files is of use. @param files  2 or more */
export const usableFiles = {
  all: (files: number) => `All ${files} files can be used.`,
  some: (usable: number, files: number) =>
    `${usable} of ${files} files can be used. What is wrong comes first.`,
  /** @param inPart  how many of the usable ones have faults */
  inPart: (usable: number, files: number, inPart: number) =>
    `${usable} of ${files} files can be used, ${inPart} of them in part. What is wrong comes first.`,
};

/** What was taken of a table. */
export const takenTable = {
  opened: (title: string) =>
    `“${title}” is open as a new experiment. What was open before is in the list under Records.`,
  added: (marks: number) => `${counted(marks, 'mark')} added; Undo takes that back.`,
  /** @param why  for some of them, row by row */
  leftOut: (rows: number, why: string) => `${counted(rows, 'row was', 'rows were')} left out: ${why}`,
  nothing: (why: string) => `No row of the table could be used. ${why}`,
  nothingOf: (title: string, why: string) => `No row of ${title} could be used. ${why}`,
  unknownRow: (message: string) => `row ?: ${message}`,
};
