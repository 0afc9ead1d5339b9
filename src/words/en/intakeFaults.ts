import type { Limit } from '../../limits/limits.ts';
import { fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

/** What text that was pasted is called beside the names of files. */
export const pastedName = 'Pasted text';

/** Files that are often dropped by mistake. */
export const otherFile = {
  archive:
    'This is a spreadsheet’s own file or a ZIP archive, which this page doesn’t open. Save it as CSV there and open that.',
  oldDocument: 'This is an old spreadsheet or document. Save it as CSV there and open that.',
  compressed: 'This file is compressed. Unpack it first.',
  pdf: 'This is a PDF. Numbers can’t be read from it: open the table it was made from.',
  picture: 'This is a picture. Numbers can’t be read from it.',
};

/** What is wrong with what came in, and what to do. Small first letters: row and column go before it. */
export const intakeFault = {
  empty: 'The file is empty.',
  largeExperiment: (bytes: number, mostBytes: number) =>
    `The file has ${megabytes(bytes)}; an experiment has at most ${megabytes(mostBytes)}.`,
  largeTable: (bytes: number, mostBytes: number) =>
    `The file has ${megabytes(bytes)}; a table of marks has at most ${megabytes(mostBytes)}.`,
  unreadable: 'The file can’t be read. If it was moved or changed, choose it again.',
  longPaste: (millions: string) =>
    `The text has ${millions} million characters: no table of marks is that long.`,
  nested: 'The file is nested far deeper than any experiment: it is something else.',
  /** @param said  the engine's own word for it, the only clue to where */
  noJson: (said: string) => `The file isn’t whole JSON (${said}). Save it again on this page.`,
  classResult:
    'This is the result of a whole class: it holds no marks. Open the groups’ own files, or the class’s CSV file.',
  noResults: 'The table has a heading but no results.',
  noUncertainty:
    'results need a column standard_uncertainty_mps or expanded_uncertainty_mps (95 %): without it they can’t be weighted.',
  noSpeed: (lowestMps: string, highestMps: string, typed: string) =>
    `must be ${lowestMps} to ${highestMps} m/s, not ${typed}. Check the number and its unit.`,
  recordFull: (mostBytes: number) =>
    `with this row the experiment’s file would have more than ${megabytes(mostBytes)}. Begin another one for the rest, or shorten the notes.`,
  listFull: (most: number) =>
    `an experiment holds ${most} marks, forks or places at most. Begin another one for the rest.`,
  badOrder: (order: number, { lowest, highest }: Limit) =>
    `the order must be ${lowest} to ${highest}, not ${order}. Leave it empty if you don’t know.`,
  otherTube: (diameterM: number, ownDiameterM: number) =>
    `this tube is ${fullMillimetres(diameterM)} mm wide, the experiment’s is ${fullMillimetres(ownDiameterM)} mm. Another tube is another experiment.`,
  otherMouth: (mouth: string, ownMouth: string) =>
    `this mouth is ${mouth}, the experiment’s is ${ownMouth}. Another tube is another experiment.`,
  noReading: (zeroOffsetM: number, columnM: number, { lowest, highest }: Limit) =>
    `with the rule’s zero offset of ${fullCentimetres(zeroOffsetM)} cm a column of ${fullCentimetres(columnM)} cm would be read at ${fullCentimetres(columnM + zeroOffsetM)} cm; readings are ${fullCentimetres(lowest)} cm to ${fullCentimetres(highest)} cm. Open the table as a new experiment, or change the zero offset under Apparatus first.`,
};

/** What a person should know of what came in though nothing is wrong. */
export const intakeRemark = {
  notRead: (headings: string) => `These columns are not read: ${headings}.`,
  skipped: (rows: string) => `These rows are left out (excluded) and can’t be read: ${rows}.`,
  mendFile: 'Correct these fields in the file, or save it again from this page; then open it again.',
  goodPart: 'The part without faults lacks what is named here; numbers that were left out are in its note.',
  widestTaken: (widestM: number) =>
    `The lengths have different uncertainties (the usual one where none is given): the largest, ${fullMillimetres(widestM)} mm, is taken for all.`,
  offsetPutBack: (zeroOffsetM: number) =>
    `The table’s lengths are taken as lengths of the column: the rule’s zero offset of ${fullMillimetres(zeroOffsetM)} mm is added again.`,
};
