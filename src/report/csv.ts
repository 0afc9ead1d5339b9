import { guarded } from '../marks/formulaGuard.ts';

/** A cell: text is made harmless, a number is written in full, null is left empty. */
export type Cell = string | number | null;

/**
 * Rows as CSV after RFC 4180: comma, CRLF after every row, quotes doubled inside quoted cells.
 * A text cell that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay numbers.
 */
export function toCsv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('');
}

function writeCell(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return writeNumber(cell);
  // No table can hold a NUL: readers take a file with one for no text.
  const harmless = guarded(cell.replaceAll('\u0000', ''));
  // A line that begins with # would be read as a comment.
  return /[",\r\n]|^#/.test(harmless) || harmless !== harmless.trim()
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}

/** All digits that mean anything: 15 of them, which drops the noise of binary fractions (15.8, not 15.800000000000002). */
export function writeNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`value must be a finite number, got ${value}`);
  return String(Number(value.toPrecision(15)));
}
