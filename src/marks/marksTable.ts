import { isWithin, LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { MOST_TABLE_ROWS } from '../limits/sizes.ts';
import { textFault } from '../limits/texts.ts';
import { splitDelimited } from './delimited.ts';
import type { DelimitedRecord } from './delimited.ts';
import type { ColumnEnds } from './mark.ts';
import { unguarded } from './formulaGuard.ts';
import { READ_COLUMNS, REQUIRED_COLUMNS } from './markColumns.ts';
import type { ReadColumn, RequiredColumn } from './markColumns.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';
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
  readonly column: string | null;
  readonly message: string;
}

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
  if (text.includes('\u0000')) return refuse('The file is no text: save it as CSV, not as a spreadsheet.');
  let body = text.replace(/^\ufeff/, '');
  if (body.trim() === '') return refuse('The file is empty.');
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
    column: heading ?? `cell ${fault.cell}`,
    message: `${fault.message}.`,
  };
  if (withHeading.length < 2) return { ok: false, faults: [broken], rows: [] };
  const before = readRecords(withHeading, delimiter, defaults);
  return { ok: false, faults: [...(before.ok ? [] : before.faults), broken], rows: before.rows };
}

/** All faults in one sentence each, for a person. */
export function describeFaults(faults: readonly TableFault[]): string {
  const shown = faults.slice(0, 5).map(({ row, column, message }) => {
    const where = [row === null ? null : `row ${row}`, column === null ? null : `column ${column}`];
    const prefix = where.filter((part) => part !== null).join(', ');
    return prefix === '' ? message : `${prefix}: ${message}`;
  });
  const more = faults.length - shown.length;
  return shown.join(' ') + (more > 0 ? ` And ${more} more.` : '');
}

function refuse(message: string): MarksTable {
  return { ok: false, faults: [{ row: null, column: null, message }], rows: [] };
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
  if (heading === undefined) return refuse('The file has no heading row.');
  const names = heading.cells.map(columnName);
  const needed = REQUIRED_COLUMNS.filter((column) => defaults === null || column === 'length_cm');
  const missing = needed.filter((column) => !names.includes(column));
  const faults: TableFault[] = missing.length === 0 ? [] : [missingColumns(heading, names, missing)];
  for (const column of READ_COLUMNS) {
    if (names.filter((name) => name === column).length > 1) {
      faults.push({ row: heading.row, column, message: 'the column is there more than once.' });
    }
  }
  if (faults.length > 0) return { ok: false, faults, rows: [] };
  if (rest.length === 0) return refuse('The file has a heading but no rows of marks.');
  if (rest.length > MOST_TABLE_ROWS)
    return refuse(
      `The file has ${rest.length} rows; ${MOST_TABLE_ROWS} is the most. Split it into several files.`,
    );

  const rows: MarkRow[] = [];
  const skipped: number[] = [];
  for (const { row, cells } of rest) {
    if (cells.slice(names.length).some((cell) => cell !== '')) {
      const hint =
        delimiter === ','
          ? ' With decimal commas put semicolons between the cells, or quotes around them.'
          : '';
      faults.push({
        row,
        column: null,
        message: `there are ${cells.length} cells under ${names.length} headings.${hint}`,
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
  if (rows.every(({ excluded }) => excluded)) return { ...refuse('Every row of marks is excluded.'), rows };
  return { ok: true, rows, passedOver: unreadColumns(heading.cells, names), skipped };
}

/** Of a row that can't be read: whether that doesn't matter. */
function isExcluded(text: string): boolean {
  const parsed = parseExcluded(text);
  return parsed.ok && parsed.excluded;
}

/** One fault for all columns that are missing, with what is likely behind it. */
function missingColumns(
  heading: DelimitedRecord,
  names: readonly string[],
  missing: readonly RequiredColumn[],
): TableFault {
  const found = heading.cells.map(shorten).slice(0, 12).join(', ');
  const { row } = heading;
  if (missing.length === REQUIRED_COLUMNS.length) {
    const hint =
      heading.cells.length === 1
        ? ' Put commas, semicolons or tabs between the cells, and no title above the heading (or begin it with #).'
        : ' Put a heading on top.';
    const message = `the heading has none of the columns ${REQUIRED_COLUMNS.join(', ')}. It reads: ${found}.${hint}`;
    return { row, column: missing.join(' and '), message };
  }
  const alike = missing.flatMap((column) => {
    const [stem = ''] = column.split('_');
    const near = names.findIndex((name) => name !== column && name.startsWith(stem));
    return near < 0 ? [] : [`Is “${shorten(heading.cells[near] ?? '')}” meant? Call it ${column}.`];
  });
  const unit = missing.includes('length_cm')
    ? ' Plain lengths are in cm; a cell may say its own unit, like 158 mm.'
    : '';
  return {
    row,
    column: missing.join(' and '),
    message:
      `${missing.length === 1 ? 'the column is' : 'these columns are'} missing. The heading has: ${found}. Needed: ${REQUIRED_COLUMNS.join(', ')}. ${alike.join(' ')}${alike.length > 0 ? unit : ''}`.trim(),
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
    faults.push({ row, column, message: parsed.message });
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
  const takeText = (column: ReadColumn, name: string, longest: number): string => {
    const text = unguarded(cell(column));
    const message = textFault(name, text, longest);
    if (message !== null) faults.push({ row, column, message });
    return text;
  };
  const place = takeText('place', 'The place’s name', LONGEST.name);
  const group = takeText('group', 'The group’s name', LONGEST.name);
  const note = takeText('note', 'The note', LONGEST.markNote);
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
  const got = ends === '' ? 'The cell is empty.' : `“${shorten(text)}” is neither.`;
  return { ok: false, message: `${got} Write closed (one end closed) or open (both ends open).` };
}

function parseOrder(text: string): Parsed<{ readonly order: number }> {
  const parsed = parseDecimal(text, 'order');
  if (!parsed.ok) return parsed;
  const { value, unit } = parsed;
  if (unit === '' && Number.isInteger(value) && isWithin(LIMITS.order, value))
    return { ok: true, order: value };
  return {
    ok: false,
    message: `The order must be a whole number ${LIMITS.order.lowest}..${LIMITS.order.highest}, got ${shorten(text)}. The first resonance has 1; leave it empty where you don’t know.`,
  };
}
