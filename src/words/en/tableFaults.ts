/** What is wrong with a table, and what to do. Small first letters: where it is goes before it. */
export const tableFault = {
  /** @param number  counts from 1 */
  cell: (number: number) => `cell ${number}`,
  noText: 'This is not a text file. Save the table as CSV, not as a spreadsheet.',
  noContent: 'The file is empty.',
  noHeading: 'The file has no heading row.',
  noRows: 'The file has a heading but no rows of marks.',
  allExcluded: 'Every row of marks is left out (excluded).',
  columnTwice: 'the column is there more than once. Delete one, or rename it.',
  quotes: {
    unclosed: 'a quote (") is opened and never closed. Close it, or delete it.',
    'text-behind': 'there is text after a closing quote ("). Put it inside the quotes, or delete them.',
    stray: 'there is a stray quote (") inside the cell. Delete it.',
  },
  manyRows: (rows: number, most: number) =>
    `The file has ${rows} rows; ${most} is the most. Split it into several files.`,
  manyCells: (cells: number, headings: number) => `there are ${cells} cells under ${headings} headings.`,
  decimalCommas: 'With decimal commas put semicolons between the cells, or quotes around them.',
  noneOf: (needed: string, found: string) =>
    `the heading has none of the columns ${needed}. It reads: ${found}.`,
  putDelimiters:
    'Put commas, semicolons or tabs between the cells, and no title above the heading (or begin it with #).',
  putHeading: 'Put a heading on top.',
  missing: (found: string, needed: string) =>
    `the column is missing. The heading has: ${found}. Needed: ${needed}.`,
  severalMissing: (found: string, needed: string) =>
    `these columns are missing. The heading has: ${found}. Needed: ${needed}.`,
  meant: (heading: string, column: string) => `If “${heading}” is meant, call it ${column}.`,
  plainLengths: 'Lengths without a unit are in cm; a cell may have its own unit, like 158 mm.',
};
