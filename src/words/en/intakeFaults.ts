import type { Limit } from '../../limits/limits.ts';
import { fixed, fullCentimetres, fullMillimetres, megabytes } from '../numbers.ts';

const AS_CSV = 'Save it as CSV there and open that.';

/** Of long lists a reader is shown so many. */
const MOST_NAMED = 8;

/** Files that are often dropped by mistake. */
export const otherFile = {
  archive: `This is a spreadsheet's own file or a ZIP archive, which isn’t opened here. ${AS_CSV}`,
  oldDocument: `This is an old spreadsheet or document. ${AS_CSV}`,
  compressed: 'This file is compressed. Unpack it first.',
  pdf: 'This is a PDF. Numbers can’t be read from it: open the table it was made from.',
  picture: 'This is a picture. Numbers can’t be read from it.',
};

/** What is wrong with what came in, and what to do. */
export const intakeFault = {
  empty: 'The file is empty.',
  tooLarge: (bytes: number, mostBytes: number, isExperiment: boolean): string =>
    isExperiment
      ? `The file has ${megabytes(bytes)}; an experiment has at most ${megabytes(mostBytes)}.`
      : `The file has ${megabytes(bytes)}; a table of marks has at most ${megabytes(mostBytes)}.`,
  /** @param said  the browser's own word for it */
  unreadable: (said: string): string =>
    `The file can’t be read (${said}). If it was moved or changed, choose it again.`,
  longPaste: (characters: number): string =>
    `The text has ${fixed(characters / 1e6, 0)} million characters: no table of marks is that long.`,
  nested: 'The file is nested far deeper than any experiment: it is something else.',
  /** @param said  the engine's own word for it */
  noJson: (said: string): string => `The file isn’t whole JSON: ${said}. Save it again from the bench.`,
  classResult:
    'This is the result of a whole class: it holds no marks. Open the groups’ own files, or the class’s CSV file.',
  noResults: 'The table has a heading but no results.',
  noUncertainty:
    'results need a column standard_uncertainty_mps or expanded_uncertainty_mps (95 %): without it they can’t be weighed.',
  noSpeed: (lowestMps: number, highestMps: number, typed: string): string =>
    `must be ${lowestMps}..${highestMps} m/s, got ${typed}. Check the number and its unit.`,
  recordFull: (mostBytes: number): string =>
    `with this row the experiment’s file would have more than ${megabytes(mostBytes)}. Begin another one for the rest, or shorten the notes.`,
  listFull: (most: number): string =>
    `an experiment holds ${most} marks, forks or places at most. Begin another one for the rest.`,
  badOrder: (order: number, { lowest, highest }: Limit): string =>
    `an order of ${order} is outside of ${lowest} to ${highest}. Leave it empty where you don’t know.`,
  otherTube: (diameterM: number, ownDiameterM: number): string =>
    `this tube is ${fullMillimetres(diameterM)} mm wide, the experiment’s is ${fullMillimetres(ownDiameterM)} mm. Another tube is another experiment.`,
  otherMouth: (mouth: string, ownMouth: string): string =>
    `this mouth is ${mouth}, the experiment’s is ${ownMouth}. Another tube is another experiment.`,
  noReading: (zeroOffsetM: number, columnM: number, { lowest, highest }: Limit): string =>
    `with the rule’s zero offset of ${fullCentimetres(zeroOffsetM)} cm a column of ${fullCentimetres(columnM)} cm would be read at ${fullCentimetres(columnM + zeroOffsetM)} cm; readings are ${fullCentimetres(lowest)} cm to ${fullCentimetres(highest)} cm. Open the table as a new experiment, or change the zero offset under Apparatus first.`,
};

/** What a person should know of what came in though nothing is wrong. */
export const intakeRemark = {
  notRead: (headings: readonly string[]): string =>
    `These columns are not read: ${headings.slice(0, MOST_NAMED).join(', ')}.`,
  skipped: (rows: readonly number[]): string =>
    `Excluded rows that can’t be read are passed over: ${rows.slice(0, MOST_NAMED).join(', ')}.`,
  mendFile:
    'Put the fields that are named right in the file, or save it again from the bench, then open it once more.',
  goodPart: 'The good part is without what is named here; numbers that were left out stand in its note.',
  widestTaken: (widestM: number): string =>
    `The lengths have different uncertainties (what is usual where none is stated): the largest, ${fullMillimetres(widestM)} mm, is taken for all.`,
  offsetPutBack: (zeroOffsetM: number): string =>
    `The table’s lengths are taken as columns’: the rule’s zero offset of ${fullMillimetres(zeroOffsetM)} mm is put back.`,
};
