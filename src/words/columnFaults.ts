import { columnM, readingLimit } from '../marks/columnOfMark.ts';
import type { ColumnFault, ReadingFault } from '../notebook/columnFault.ts';
import { fullCentimetres } from './numbers.ts';

/** A mark that the zero offset leaves no column, and what to do. */
export function columnFaultWords(fault: ColumnFault): string {
  const at = fullCentimetres(fault.readingM);
  const isDeleted = fault.markNumber === null;
  const who = isDeleted ? `the deleted mark at ${at} cm` : `mark ${fault.markNumber} at ${at} cm`;
  const what = isDeleted ? 'bring that mark back and correct its length' : 'correct the mark’s length';
  return `${noColumnWords(who, fault)} Correct the offset, or ${what}.`;
}

/** A typed reading that the zero offset leaves no column, and what to do. */
export function readingFaultWords(fault: ReadingFault): string {
  const who = `a reading of ${fullCentimetres(fault.readingM)} cm`;
  return `${noColumnWords(who, fault)} Correct it, or the zero offset under Apparatus.`;
}

function noColumnWords(who: string, { readingM, zeroOffsetM }: ReadingFault): string {
  const { lowest, highest } = readingLimit(zeroOffsetM);
  const columnCm = fullCentimetres(columnM(readingM, zeroOffsetM));
  return `With the zero offset of ${fullCentimetres(zeroOffsetM)} cm ${who} would be a column of ${columnCm} cm: readings must be ${fullCentimetres(lowest)} cm to ${fullCentimetres(highest)} cm.`;
}
