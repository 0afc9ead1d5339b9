import { laterWords } from './inUse.ts';
import { fixed } from './numbers.ts';

/** Of long lists a reader is shown so many. */
const MOST_NAMED = 8;

/** Text that is far too long for a table. @param characters  its length */
export function longPasteWords(characters: number): string {
  return laterWords.intakeFault.longPaste(fixed(characters / 1e6, 0));
}

/** Columns that look as if they were meant, but aren't. */
export function notReadWords(headings: readonly string[]): string {
  return laterWords.intakeRemark.notRead(headings.slice(0, MOST_NAMED).join(', '));
}

/** Rows that are left out and can't be read. */
export function skippedWords(rows: readonly number[]): string {
  return laterWords.intakeRemark.skipped(rows.slice(0, MOST_NAMED).join(', '));
}
