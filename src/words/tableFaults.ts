import { REQUIRED_COLUMNS } from '../marks/markColumns.ts';
import type { TableFault, TableProblem } from '../marks/tableFault.ts';
import { laterWords } from './inUse.ts';
import { listed } from './lists.ts';
import { parseFaultWords } from './parseFaults.ts';

/** Of a long list a reader is shown so many. */
const MOST_FAULTS = 5;

/** Faults of a table with their places, in one text, as the command line says them: in English. */
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
  if (fault.code === 'columns-missing') return listed(fault.columns);
  if (fault.code === 'quote') return column ?? laterWords.tableFault.cell(fault.cell);
  return column;
}

/** What is wrong, without where. */
export function tableProblemWords(fault: TableProblem): string {
  const said = laterWords.tableFault;
  switch (fault.code) {
    case 'no-text':
      return said.noText;
    case 'no-content':
      return said.noContent;
    case 'no-heading':
      return said.noHeading;
    case 'no-rows':
      return said.noRows;
    case 'all-excluded':
      return said.allExcluded;
    case 'column-twice':
      return said.columnTwice;
    case 'quote':
      return said.quotes[fault.quote];
    case 'many-rows':
      return said.manyRows(fault.rows, fault.most);
    case 'many-cells': {
      const many = said.manyCells(fault.cells, fault.headings);
      return fault.isComma ? `${many} ${said.decimalCommas}` : many;
    }
    case 'columns-missing':
      return missingWords(fault);
    default:
      return parseFaultWords(fault);
  }
}

function missingWords({
  columns,
  found,
  isOneCell,
  alike,
}: Extract<TableProblem, { readonly code: 'columns-missing' }>): string {
  const said = laterWords.tableFault;
  const needed = REQUIRED_COLUMNS.join(', ');
  const headings = found.join(', ');
  if (isOneCell !== null) {
    return `${said.noneOf(needed, headings)} ${isOneCell ? said.putDelimiters : said.putHeading}`;
  }
  const missing = columns.length === 1 ? said.missing : said.severalMissing;
  const isUnitMeant = alike.length > 0 && columns.includes('length_cm');
  return [
    missing(headings, needed),
    ...alike.map(({ heading, column }) => said.meant(heading, column)),
    ...(isUnitMeant ? [said.plainLengths] : []),
  ].join(' ');
}
