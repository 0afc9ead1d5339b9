import { MOST_TABLE_ROWS } from '../limits/sizes.ts';
import { splitDelimited } from './delimited.ts';
import type { DelimitedRecord } from './delimited.ts';
import type { ColumnEnds } from './mark.ts';
import { READ_COLUMNS, REQUIRED_COLUMNS } from './markColumns.ts';
import type { ReadColumn } from './markColumns.ts';
import { readRow } from './markRow.ts';
import type { MarkRow } from './markRow.ts';
import { parseExcluded } from './parseExcluded.ts';
import { bareHeading, columnName, likelyDelimiter } from './tableDialect.ts';
import { missingColumns } from './tableFault.ts';
import type { TableFault, TableProblem } from './tableFault.ts';
import { unreadColumns } from './unreadColumns.ts';

export type MarksTable =
  | {
      readonly ok: true;
      /** At least one is not excluded. */
      readonly rows: readonly MarkRow[];
      /** Headings that are not read but look as if they were meant to be: temp_c, diameter_cm. */
      readonly passedOver: readonly string[];
      /** Excluded rows that can't be read: they are not among the rows. */
      readonly skipped: readonly number[];
    }
  | {
      readonly ok: false;
      readonly faults: readonly TableFault[];
      /** What could be read all the same. */
      readonly rows: readonly MarkRow[];
    };

/** What a table may leave out, because whoever pastes it knows it. */
export interface TableDefaults {
  readonly forkHz: number;
  readonly ends: ColumnEnds;
}

/**
 * Reads a table of marks: comma, semicolon or tab between the cells, decimal point or comma, quotes after RFC 4180,
 * with or without a byte-order mark. Required columns fork_hz, ends (closed or open), length_cm; the others are
 * optional: see `markColumns.ts`. other_length_cm says that the resonance lies between the two lengths. Headings may be
 * written like "fork (Hz)"; other columns are passed over.
 * @param text  the whole file
 * @param defaults  for a table that was pasted: fork and ends where their columns are missing. The heading may then be
 *   missing too; one column holds lengths, two hold pitches and lengths, three pitches, ends and lengths.
 * @returns the rows in the table's order, or every fault with its row and column
 */
export function readMarksTable(text: string, defaults: TableDefaults | null = null): MarksTable {
  if (text.includes('\u0000')) return refuse({ code: 'no-text' });
  let body = text.replace(/^\ufeff/, '');
  if (body.trim() === '') return refuse({ code: 'no-content' });
  let skipped = 0;
  // Some spreadsheets write "sep=;" as a first line to name the delimiter.
  const named = /^"?sep=(.)"?[ \t]*(\r\n|\n|\r)/i.exec(body);
  if (named !== null) {
    body = body.slice(named[0].length);
    skipped = 1;
  }
  const bare = defaults === null || named !== null ? null : bareHeading(body);
  const delimiter = named?.[1] ?? bare?.delimiter ?? likelyDelimiter(body);
  const { records, fault } = splitDelimited(body, delimiter);
  const numbered = records.map(({ row, cells }) => ({ row: row + skipped, cells }));
  const withHeading = bare === null ? numbered : [{ row: 0, cells: bare.names }, ...numbered];
  if (fault === null) return readRecords(withHeading, delimiter, defaults);

  const heading = withHeading.at(0)?.cells.map(columnName)[fault.cell - 1] ?? null;
  const broken: TableFault = {
    row: fault.row + skipped,
    column: heading,
    fault: { code: 'quote', quote: fault.quote, cell: fault.cell },
  };
  if (withHeading.length < 2) return { ok: false, faults: [broken], rows: [] };
  const before = readRecords(withHeading, delimiter, defaults);
  return { ok: false, faults: [...(before.ok ? [] : before.faults), broken], rows: before.rows };
}

function refuse(fault: TableProblem): MarksTable {
  return { ok: false, faults: [{ row: null, column: null, fault }], rows: [] };
}

function readRecords(
  records: readonly DelimitedRecord[],
  delimiter: string,
  defaults: TableDefaults | null,
): MarksTable {
  const [heading, ...rest] = records;
  if (heading === undefined) return refuse({ code: 'no-heading' });
  const names = heading.cells.map(columnName);
  const needed = REQUIRED_COLUMNS.filter((column) => defaults === null || column === 'length_cm');
  const missing = needed.filter((column) => !names.includes(column));
  const faults: TableFault[] = missing.length === 0 ? [] : [missingColumns(heading, names, missing)];
  for (const column of READ_COLUMNS) {
    if (names.filter((name) => name === column).length > 1) {
      faults.push({ row: heading.row, column, fault: { code: 'column-twice' } });
    }
  }
  if (faults.length > 0) return { ok: false, faults, rows: [] };
  if (rest.length === 0) return refuse({ code: 'no-rows' });
  if (rest.length > MOST_TABLE_ROWS)
    return refuse({ code: 'many-rows', rows: rest.length, most: MOST_TABLE_ROWS });

  const rows: MarkRow[] = [];
  const skipped: number[] = [];
  for (const { row, cells } of rest) {
    if (cells.slice(names.length).some((cell) => cell !== '')) {
      const counts = { cells: cells.length, headings: names.length };
      faults.push({
        row,
        column: null,
        fault: { code: 'many-cells', ...counts, isComma: delimiter === ',' },
      });
      continue;
    }
    const cell = (column: ReadColumn): string => {
      const at = names.indexOf(column);
      if (at >= 0) return cells[at] ?? '';
      if (column === 'fork_hz') return String(defaults?.forkHz ?? '');
      return column === 'ends' ? (defaults?.ends ?? '') : '';
    };
    const read = readRow(row, cell);
    if (!Array.isArray(read)) rows.push(read);
    else if (isExcluded(cell('excluded'))) skipped.push(row);
    else faults.push(...read);
  }
  if (faults.length > 0) return { ok: false, faults, rows };
  if (rows.every(({ excluded }) => excluded)) return { ...refuse({ code: 'all-excluded' }), rows };
  return { ok: true, rows, passedOver: unreadColumns(heading.cells, names), skipped };
}

/** Of a row that can't be read: whether that doesn't matter. */
function isExcluded(text: string): boolean {
  const parsed = parseExcluded(text);
  return parsed.ok && parsed.excluded;
}
