import { REQUIRED_COLUMNS } from '../marks/markColumns.ts';
import type { TableFault, TableProblem } from '../marks/tableFault.ts';
import { parseFaultWords } from './parseFaults.ts';

/** Of a long list a reader is shown so many. */
const MOST_FAULTS = 5;

/** Faults of a table with their places, in one text. */
export function tableFaultsWords(faults: readonly TableFault[]): string {
  const shown = faults.slice(0, MOST_FAULTS).map((one) => {
    const column = faultyColumn(one);
    const where = [one.row === null ? null : `row ${one.row}`, column === null ? null : `column ${column}`];
    const prefix = where.filter((part) => part !== null).join(', ');
    const said = tableProblemWords(one.fault);
    return prefix === '' ? said : `${prefix}: ${said}`;
  });
  const more = faults.length - shown.length;
  return shown.join(' ') + (more > 0 ? ` And ${more} more.` : '');
}

/** The column, or the columns, that a fault is about; null where it is about none. */
export function faultyColumn({ column, fault }: TableFault): string | null {
  if (fault.code === 'columns-missing') return fault.columns.join(' and ');
  if (fault.code === 'quote') return column ?? `cell ${fault.cell}`;
  return column;
}

/** What is wrong, without where. */
export function tableProblemWords(fault: TableProblem): string {
  switch (fault.code) {
    case 'no-text':
      return 'The file is no text: save it as CSV, not as a spreadsheet.';
    case 'no-content':
      return 'The file is empty.';
    case 'no-heading':
      return 'The file has no heading row.';
    case 'no-rows':
      return 'The file has a heading but no rows of marks.';
    case 'all-excluded':
      return 'Every row of marks is excluded.';
    case 'column-twice':
      return 'the column is there more than once.';
    case 'quote':
      return QUOTES[fault.quote];
    case 'many-rows':
      return `The file has ${fault.rows} rows; ${fault.most} is the most. Split it into several files.`;
    case 'many-cells': {
      const hint = fault.isComma
        ? ' With decimal commas put semicolons between the cells, or quotes around them.'
        : '';
      return `there are ${fault.cells} cells under ${fault.headings} headings.${hint}`;
    }
    case 'columns-missing':
      return missingWords(fault);
    default:
      return parseFaultWords(fault);
  }
}

const QUOTES = {
  unclosed: 'a quote (") is opened and never closed. Close it, or take it away.',
  'text-behind': 'text stands behind a closing quote ("). Put it inside the quotes, or take them away.',
  stray: 'a stray quote (") stands inside the cell. Take it away.',
} as const;

function missingWords({
  columns,
  found,
  isOneCell,
  alike,
}: Extract<TableProblem, { readonly code: 'columns-missing' }>): string {
  const needed = REQUIRED_COLUMNS.join(', ');
  const headings = found.join(', ');
  if (isOneCell !== null) {
    const hint = isOneCell
      ? 'Put commas, semicolons or tabs between the cells, and no title above the heading (or begin it with #).'
      : 'Put a heading on top.';
    return `the heading has none of the columns ${needed}. It reads: ${headings}. ${hint}`;
  }
  const meant = alike.map(({ heading, column }) => `Is “${heading}” meant? Call it ${column}.`);
  const isUnitMeant = alike.length > 0 && columns.includes('length_cm');
  return [
    `${columns.length === 1 ? 'the column is' : 'these columns are'} missing. The heading has: ${headings}. Needed: ${needed}.`,
    ...meant,
    ...(isUnitMeant ? ['Plain lengths are in cm; a cell may say its own unit, like 158 mm.'] : []),
  ].join(' ');
}
