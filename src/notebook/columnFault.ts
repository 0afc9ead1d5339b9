import { hasColumn } from '../marks/columnOfMark.ts';
import { markNumber } from './markList.ts';
import type { Experiment } from './experiment.ts';

/** A reading from which the rule's zero offset leaves no column. */
export interface ReadingFault {
  readonly readingM: number;
  readonly zeroOffsetM: number;
}

/** The same of a mark of an experiment. */
export interface ColumnFault extends ReadingFault {
  /** The mark's number; null for a deleted one, which has none. */
  readonly markNumber: number | null;
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
      if (readingM === undefined || readingM === null) continue;
      const { zeroOffsetM } = rule;
      return { readingM, zeroOffsetM, markNumber: isDeleted ? null : markNumber(experiment, mark.id) };
    }
  }
  return null;
}

/** What is wrong with a reading that is typed; null where it leaves a column. */
export function readingFault(readingM: number, zeroOffsetM: number): ReadingFault | null {
  return hasColumn(readingM, zeroOffsetM) ? null : { readingM, zeroOffsetM };
}
