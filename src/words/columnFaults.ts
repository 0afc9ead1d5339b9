import { columnM, readingLimit } from '../marks/columnOfMark.ts';
import type { ColumnFault, ReadingFault } from '../notebook/columnFault.ts';
import { words } from './inUse.ts';
import { fullCentimetres } from './numbers.ts';

/** A mark that the zero offset leaves no column, and what to do. */
export function columnFaultWords(fault: ColumnFault): string {
  const said = words.columnFault;
  const lengths = lengthsWords(fault);
  return fault.markNumber === null ? said.deletedMark(lengths) : said.mark(fault.markNumber, lengths);
}

/** A typed reading that the zero offset leaves no column, and what to do. */
export function readingFaultWords(fault: ReadingFault): string {
  return words.columnFault.reading(lengthsWords(fault));
}

/** In cm. */
function lengthsWords({ readingM, zeroOffsetM }: ReadingFault) {
  const { lowest, highest } = readingLimit(zeroOffsetM);
  return {
    zeroOffset: fullCentimetres(zeroOffsetM),
    reading: fullCentimetres(readingM),
    column: fullCentimetres(columnM(readingM, zeroOffsetM)),
    lowest: fullCentimetres(lowest),
    highest: fullCentimetres(highest),
  };
}
