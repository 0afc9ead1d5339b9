import { parseEnds } from './markRow.ts';
import { parseDecimal } from './parseDecimal.ts';

/** The delimiter that parts most cells of the heading. */
export function likelyDelimiter(body: string): string {
  const lines = body.split(/\r\n|\n|\r/);
  const heading = (lines.find((line) => line.trim() !== '' && !line.startsWith('#')) ?? '').replace(
    /"[^"]*"/g,
    '',
  );
  const count = (delimiter: string): number => heading.split(delimiter).length;
  return [',', ';', '\t'].reduce((best, delimiter) => (count(delimiter) > count(best) ? delimiter : best));
}

/** What columns of numbers without a heading mean; null where there is a heading, or more columns than can be guessed. */
export function bareHeading(
  body: string,
): { readonly delimiter: string; readonly names: readonly string[] } | null {
  const first = body.split(/\r\n|\n|\r/).find((line) => line.trim() !== '' && !line.startsWith('#')) ?? '';
  // A comma may be a decimal comma: only tabs and semicolons part bare columns.
  const delimiter = first.includes('\t') ? '\t' : ';';
  const cells = first.split(delimiter).map((cell) => cell.trim());
  const isNumber = cells.map((cell) => parseDecimal(cell).ok);
  if (cells.length === 1 && isNumber.at(0) === true) return { delimiter, names: ['length_cm'] };
  if (cells.length === 2 && isNumber.every(Boolean)) return { delimiter, names: ['fork_hz', 'length_cm'] };
  if (
    cells.length === 3 &&
    isNumber.at(0) === true &&
    parseEnds(cells.at(1) ?? '').ok &&
    isNumber.at(2) === true
  )
    return { delimiter, names: ['fork_hz', 'ends', 'length_cm'] };
  return null;
}

/** "Fork (Hz)" becomes fork_hz. */
export function columnName(heading: string): string {
  const name = heading
    .toLowerCase()
    .replaceAll('%', 'pct')
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '');
  return name;
}
