import { isWithin, LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { MOST_TABLE_ROWS } from '../limits/sizes.ts';
import { splitDelimited } from './delimited.ts';
import type { DelimitedRecord, QuoteFault } from './delimited.ts';
import type { ColumnEnds } from './mark.ts';
import { unguarded } from './formulaGuard.ts';
import { READ_COLUMNS, REQUIRED_COLUMNS } from './markColumns.ts';
import type { ReadColumn, RequiredColumn } from './markColumns.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';
import type { ParseFault } from './parseFault.ts';
import { parseExcluded } from './parseExcluded.ts';
import { parseLength } from './parseLength.ts';
import {
  parseDiameter,
  parseForkUncertainty,
  parseFrequency,
  parseHumidity,
  parsePressure,
  parseReadingUncertainty,
  parseTemperature,
} from './parseQuantities.ts';
import { unreadColumns } from './unreadColumns.ts';

/** One row of a table of marks, SI units; null where the cell or the column was not there. */
export interface MarkRow {
  /** As a spreadsheet counts: the heading is row 1. */
  readonly row: number;
  readonly forkHz: number;
  readonly ends: ColumnEnds;
  readonly lengthM: number;
  /** The other side of a bracket. */
  readonly otherLengthM: number | null;
  readonly diameterM: number | null;
  readonly temperatureC: number | null;
  readonly humidityPct: number | null;
  readonly pressurePa: number | null;
  /** '' where none was given. */
  readonly place: string;
  readonly order: number | null;
  readonly lengthUncertaintyM: number | null;
  readonly forkUncertaintyHz: number | null;
  /** Left out of the fit by whoever wrote the table. */
  readonly excluded: boolean;
  /** '' where none was given, as for the note. */
  readonly group: string;
  /** As written; '' where it wasn't. */
  readonly madeAt: string;
  readonly note: string;
}

export interface TableFault {
  /** null where the whole table is meant. */
  readonly row: number | null;
  /** null where no single column is meant, or it has no name. */
  readonly column: string | null;
  readonly fault: TableProblem;
}

/** What is wrong with a table, or one of its cells. */
export type TableProblem =
  | ParseFault
  | {
      readonly code: 'no-text' | 'no-content' | 'no-heading' | 'no-rows' | 'all-excluded' | 'column-twice';
    }
  /** The cell counts from 1. */
  | { readonly code: 'quote'; readonly quote: QuoteFault['quote']; readonly cell: number }
  | { readonly code: 'many-rows'; readonly rows: number; readonly most: number }
  /** More cells than headings; commas may be decimal commas. */
  | {
      readonly code: 'many-cells';
      readonly cells: number;
      readonly headings: number;
      readonly isComma: boolean;
    }
  | {
      readonly code: 'columns-missing';
      readonly columns: readonly RequiredColumn[];
      /** Headings that are there, shortened. */
      readonly found: readonly string[];
      /** Of one cell only, where the delimiter or the heading may be at fault; null where some column is there. */
      readonly isOneCell: boolean | null;
      /** Headings that were likely meant. */
      readonly alike: readonly { readonly heading: string; readonly column: RequiredColumn }[];
    };

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
function bareHeading(body: string): { readonly delimiter: string; readonly names: readonly string[] } | null {
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

/** More headings of a table than this help nobody. */
const MOST_HEADINGS = 12;

/** One fault for all columns that are missing, with what is likely behind it. */
function missingColumns(
  heading: DelimitedRecord,
  names: readonly string[],
  missing: readonly RequiredColumn[],
): TableFault {
  const isNone = missing.length === REQUIRED_COLUMNS.length;
  const alike = missing.flatMap((column) => {
    const [stem = ''] = column.split('_');
    const near = names.findIndex((name) => name !== column && name.startsWith(stem));
    return near < 0 ? [] : [{ heading: shorten(heading.cells[near] ?? ''), column }];
  });
  return {
    row: heading.row,
    column: missing.length === 1 ? (missing[0] ?? null) : null,
    fault: {
      code: 'columns-missing',
      columns: missing,
      found: heading.cells.map(shorten).slice(0, MOST_HEADINGS),
      isOneCell: isNone ? heading.cells.length === 1 : null,
      alike: isNone ? [] : alike,
    },
  };
}

function readRow(row: number, cell: (column: ReadColumn) => string): MarkRow | TableFault[] {
  const faults: TableFault[] = [];
  const take = <T extends object, V>(
    column: ReadColumn,
    read: (text: string) => Parsed<T>,
    pick: (value: T) => V,
  ): V | null => {
    const parsed = read(cell(column));
    if (parsed.ok) return pick(parsed);
    faults.push({ row, column, fault: parsed.fault });
    return null;
  };
  const takeIfThere: typeof take = (column, read, pick) =>
    cell(column) === '' ? null : take(column, read, pick);

  const forkHz = take('fork_hz', parseFrequency, (value) => value.frequencyHz);
  const ends = take('ends', parseEnds, (value) => value.ends);
  const lengthM = take('length_cm', parseLength, (value) => value.lengthM);
  const otherLengthM = takeIfThere('other_length_cm', parseLength, (value) => value.lengthM);
  const diameterM = takeIfThere('diameter_mm', parseDiameter, (value) => value.diameterM);
  const temperatureC = takeIfThere('temperature_c', parseTemperature, (value) => value.temperatureC);
  const humidityPct = takeIfThere('humidity_pct', parseHumidity, (value) => value.humidityPct);
  const pressurePa = takeIfThere('pressure_hpa', parsePressure, (value) => value.pressurePa);
  const order = takeIfThere('order', parseOrder, (value) => value.order);
  const lengthUncertaintyM = takeIfThere(
    'length_uncertainty_mm',
    parseReadingUncertainty,
    (value) => value.standardUncertaintyM,
  );
  const forkUncertaintyHz = takeIfThere(
    'fork_uncertainty_hz',
    parseForkUncertainty,
    (value) => value.standardUncertaintyHz,
  );
  const excluded = take('excluded', parseExcluded, (value) => value.excluded) ?? false;
  const takeText = (column: 'place' | 'group' | 'note', longest: number): string => {
    const text = unguarded(cell(column));
    const { length } = text;
    if (length > longest)
      faults.push({ row, column, fault: { code: 'long-text', what: column, length, longest } });
    return text;
  };
  const place = takeText('place', LONGEST.name);
  const group = takeText('group', LONGEST.name);
  const note = takeText('note', LONGEST.markNote);
  if (faults.length > 0 || forkHz === null || ends === null || lengthM === null) return faults;
  return {
    row,
    forkHz,
    ends,
    lengthM,
    otherLengthM,
    diameterM,
    temperatureC,
    humidityPct,
    pressurePa,
    place,
    order,
    lengthUncertaintyM,
    forkUncertaintyHz,
    excluded,
    group,
    madeAt: cell('made_at'),
    note,
  };
}

function parseEnds(text: string): Parsed<{ readonly ends: ColumnEnds }> {
  const ends = text.trim().toLowerCase();
  if (ends === 'closed' || ends === 'open') return { ok: true, ends };
  return { ok: false, fault: { code: 'no-ends', typed: ends === '' ? '' : shorten(text) } };
}

function parseOrder(text: string): Parsed<{ readonly order: number }> {
  const parsed = parseDecimal(text, 'order');
  if (!parsed.ok) return parsed;
  const { value, unit } = parsed;
  if (unit === '' && Number.isInteger(value) && isWithin(LIMITS.order, value))
    return { ok: true, order: value };
  return { ok: false, fault: { code: 'bad-order', ...LIMITS.order, typed: shorten(text) } };
}
