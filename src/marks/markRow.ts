import type { Filling } from '../air/gases.ts';
import type { MouthShape } from '../air/mouth.ts';
import { isWithin, LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { unguarded } from './formulaGuard.ts';
import type { ColumnEnds, LocatedBy } from './mark.ts';
import type { ReadColumn } from './markColumns.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';
import { parseExcluded } from './parseExcluded.ts';
import { parseLength } from './parseLength.ts';
import { parseLocatedBy } from './parseLocatedBy.ts';
import { parseFilling } from './parseFilling.ts';
import { parseMouth } from './parseMouth.ts';
import {
  parseCentreUncertainty,
  parseCo2,
  parseDiameter,
  parseForkUncertainty,
  parseFrequency,
  parseHumidity,
  parsePressure,
  parseReadingUncertainty,
  parseRise,
  parseTemperature,
  parseTemperatureUncertainty,
} from './parseQuantities.ts';
import type { TableFault } from './tableFault.ts';

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
  /** At the other open end of a telescoping tube. */
  readonly otherDiameterM: number | null;
  /** What the open ends look like. */
  readonly mouth: MouthShape | null;
  /** What is in the tube; null: nobody said, so air. */
  readonly filling: Filling | null;
  readonly temperatureC: number | null;
  readonly temperatureUncertaintyC: number | null;
  readonly humidityPct: number | null;
  readonly pressurePa: number | null;
  readonly co2MoleFraction: number | null;
  /** '' where none was given. */
  readonly place: string;
  readonly order: number | null;
  /** How the length was found. */
  readonly locatedBy: LocatedBy | null;
  /** Of the loudest place over the fork alone. */
  readonly riseDb: number | null;
  /** Of the centre that the bench showed. */
  readonly centreStandardUncertaintyHalfWidths: number | null;
  readonly lengthUncertaintyM: number | null;
  readonly forkUncertaintyHz: number | null;
  /** Rows of one name are one fork's, of different names different forks'; '' where none was given. */
  readonly forkId: string;
  /** Left out of the fit by whoever wrote the table. */
  readonly excluded: boolean;
  /** '' where none was given, as for the note. */
  readonly group: string;
  /** As written; '' where it wasn't. */
  readonly madeAt: string;
  readonly note: string;
}

/**
 * Reads one row.
 * @param row  its number
 * @param cell  what stands in a column, '' where it or the column isn't there
 * @returns the row, or everything that is wrong with it
 */
export function readRow(row: number, cell: (column: ReadColumn) => string): MarkRow | TableFault[] {
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
  const otherDiameterM = takeIfThere('other_diameter_mm', parseDiameter, (value) => value.diameterM);
  const mouth = take('mouth', parseMouth, (value) => value.mouth);
  const filling = take('gas', parseFilling, (value) => value.filling);
  const temperatureC = takeIfThere('temperature_c', parseTemperature, (value) => value.temperatureC);
  const temperatureUncertaintyC = takeIfThere(
    'temperature_uncertainty_c',
    parseTemperatureUncertainty,
    (value) => value.standardUncertaintyC,
  );
  const humidityPct = takeIfThere('humidity_pct', parseHumidity, (value) => value.humidityPct);
  const pressurePa = takeIfThere('pressure_hpa', parsePressure, (value) => value.pressurePa);
  const co2MoleFraction = takeIfThere('co2_ppm', parseCo2, (value) => value.co2MoleFraction);
  const order = takeIfThere('order', parseOrder, (value) => value.order);
  const locatedBy = take('located_by', parseLocatedBy, (value) => value.locatedBy);
  const riseDb = takeIfThere('rise_db', parseRise, (value) => value.riseDb);
  const centreStandardUncertaintyHalfWidths = takeIfThere(
    'centre_uncertainty_half_widths',
    parseCentreUncertainty,
    (value) => value.halfWidths,
  );
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
  const takeText = (column: 'place' | 'group' | 'note' | 'fork_id', longest: number): string => {
    const text = unguarded(cell(column));
    const { length } = text;
    if (length > longest)
      faults.push({ row, column, fault: { code: 'long-text', what: column, length, longest } });
    return text;
  };
  const place = takeText('place', LONGEST.name);
  const group = takeText('group', LONGEST.name);
  const note = takeText('note', LONGEST.markNote);
  const forkId = takeText('fork_id', LONGEST.id);
  if (faults.length > 0 || forkHz === null || ends === null || lengthM === null) return faults;
  return {
    row,
    forkHz,
    ends,
    lengthM,
    otherLengthM,
    diameterM,
    otherDiameterM,
    mouth,
    filling,
    temperatureC,
    temperatureUncertaintyC,
    humidityPct,
    pressurePa,
    co2MoleFraction,
    place,
    order,
    locatedBy,
    riseDb,
    centreStandardUncertaintyHalfWidths,
    lengthUncertaintyM,
    forkUncertaintyHz,
    forkId,
    excluded,
    group,
    madeAt: cell('made_at'),
    note,
  };
}

/** Reads what kind of column it is. */
export function parseEnds(text: string): Parsed<{ readonly ends: ColumnEnds }> {
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
