import { columnM, hasColumn, readingLimit } from '../marks/columnOfMark.ts';
import { inCm } from '../marks/lengthText.ts';
import type { Mark } from '../marks/mark.ts';
import { markNumber } from './markList.ts';
import type { Experiment } from './experiment.ts';

/** A reading from which the rule's zero offset leaves no column. */
export interface ColumnFault {
  readonly mark: Mark;
  readonly isDeleted: boolean;
  readonly readingM: number;
}

/** The first of an experiment's marks, the deleted ones included, that the zero offset leaves no column; null: none. */
export function columnFault(experiment: Experiment): ColumnFault | null {
  const { rule, marks, deletedMarks } = experiment;
  const lists = [
    { list: marks, isDeleted: false },
    { list: deletedMarks, isDeleted: true },
  ];
  for (const { list, isDeleted } of lists) {
    for (const mark of list) {
      const readingM = [mark.lengthM, mark.otherLengthM].find(
        (lengthM) => lengthM !== null && !hasColumn(lengthM, rule.zeroOffsetM),
      );
      if (readingM !== undefined && readingM !== null) return { mark, isDeleted, readingM };
    }
  }
  return null;
}

/** Says which mark it is, what is wrong and what to do. */
export function columnFaultWords(experiment: Experiment, { mark, isDeleted, readingM }: ColumnFault): string {
  const who = isDeleted
    ? `the deleted mark at ${inCm(readingM)}`
    : `mark ${markNumber(experiment.marks, mark.id)} at ${inCm(readingM)}`;
  const what = isDeleted ? 'bring that mark back and correct its length' : 'correct the mark’s length';
  return `${noColumnWords(who, readingM, experiment.rule.zeroOffsetM)} Correct the offset, or ${what}.`;
}

/** What is wrong with a reading that is typed; null where it leaves a column. */
export function readingFault(readingM: number, zeroOffsetM: number): string | null {
  if (hasColumn(readingM, zeroOffsetM)) return null;
  return `${noColumnWords(`a reading of ${inCm(readingM)}`, readingM, zeroOffsetM)} Correct it, or the zero offset under Apparatus.`;
}

function noColumnWords(who: string, readingM: number, zeroOffsetM: number): string {
  const { lowest, highest } = readingLimit(zeroOffsetM);
  return `With the zero offset of ${inCm(zeroOffsetM)} ${who} would be a column of ${inCm(columnM(readingM, zeroOffsetM))}: readings must be ${inCm(lowest)} to ${inCm(highest)}.`;
}
