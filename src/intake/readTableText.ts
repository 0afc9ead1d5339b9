import { splitDelimited } from '../marks/delimited.ts';
import { readMarksTable } from '../marks/marksTable.ts';
import { columnName, likelyDelimiter } from '../marks/tableDialect.ts';
import type { TableDefaults } from '../marks/marksTable.ts';
import type { TableFault } from '../marks/tableFault.ts';
import { laterWords } from '../words/inUse.ts';
import { notReadWords, skippedWords } from '../words/intakeFaults.ts';
import { faultyColumn, tableProblemWords } from '../words/tableFaults.ts';
import type { Intake, IntakeFault } from './intakeTypes.ts';
import { isResultsHeading, readResultsTable } from './readResultsTable.ts';

function located(fault: TableFault): IntakeFault {
  return { row: fault.row, column: faultyColumn(fault), message: tableProblemWords(fault.fault) };
}

/**
 * Reads text as a table of marks, or of results where its heading has speed_mps.
 * @param defaults  what a pasted table may leave out; null for files
 */
export function readTableText(name: string, text: string, defaults: TableDefaults | null): Intake {
  const body = text.replace(/^\ufeff/, '');
  const { records, fault } = splitDelimited(body, likelyDelimiter(body));
  const names = records.at(0)?.cells.map(columnName) ?? [];
  if (fault === null && isResultsHeading(names)) {
    const { results, faults } = readResultsTable(names, records.slice(1));
    const none = { row: null, column: null, message: laterWords.intakeFault.noResults };
    return {
      name,
      content: results.length === 0 ? null : { kind: 'results', results },
      faults: results.length === 0 && faults.length === 0 ? [none] : faults,
      remarks: [],
    };
  }
  const table = readMarksTable(text, defaults);
  if (!table.ok) {
    const content = table.rows.some(({ excluded }) => !excluded)
      ? ({ kind: 'table', rows: table.rows } as const)
      : null;
    return { name, content, faults: table.faults.map(located), remarks: [] };
  }
  const remarks = [
    table.passedOver.length === 0 ? null : notReadWords(table.passedOver),
    table.skipped.length === 0 ? null : skippedWords(table.skipped),
  ].filter((remark) => remark !== null);
  return { name, content: { kind: 'table', rows: table.rows }, faults: [], remarks };
}
