import { guarded } from '../marks/formulaGuard.ts';

/** A cell: text is made harmless, a number is written in full, null is left empty. */
export type Cell = string | number | null;

/** How a table is written: `point` as RFC 4180 has it, `comma` for spreadsheets that read 15,8 as a number. */
export type CsvForm = 'point' | 'comma';

/** Tells a spreadsheet that the file is UTF-8; without it some take ä for Ã¤. */
const BYTE_ORDER_MARK = '\ufeff';

/**
 * Rows as CSV after RFC 4180: comma, CRLF after every row, quotes doubled inside quoted cells. With decimal commas
 * semicolons part the cells, and a byte-order mark comes first.
 * A text cell that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay numbers.
 */
export function toCsv(rows: readonly (readonly Cell[])[], form: CsvForm = 'point'): string {
  const isComma = form === 'comma';
  const lines = rows.map(
    (row) => `${row.map((cell) => writeCell(cell, isComma)).join(isComma ? ';' : ',')}\r\n`,
  );
  return (isComma ? BYTE_ORDER_MARK : '') + lines.join('');
}

function writeCell(cell: Cell, isComma: boolean): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return isComma ? writeNumber(cell).replace('.', ',') : writeNumber(cell);
  // No table can hold a NUL: readers take a file with one for no text.
  const harmless = guarded(cell.replaceAll('\u0000', ''));
  // A line that begins with # would be read as a comment.
  return /[",;\r\n]|^#/.test(harmless) || harmless !== harmless.trim()
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}

/** All digits that mean anything: 15 of them, which drops the noise of binary fractions (15.8, not 15.800000000000002). */
export function writeNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`value must be a finite number, got ${value}`);
  return String(Number(value.toPrecision(15)));
}
