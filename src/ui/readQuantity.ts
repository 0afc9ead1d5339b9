import { LIMITS } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';
import type { Parsed } from '../marks/parseDecimal.ts';
import {
  parseDiameter,
  parseForkUncertainty,
  parseHumidity,
  parsePressure,
  parseReadingUncertainty,
  parseStamp,
  parseTemperature,
} from '../marks/parseQuantities.ts';
import { LENGTH_UNITS, parseQuantity } from '../marks/parseQuantity.ts';
import type { TypedUnit } from '../marks/parseQuantity.ts';
import { quantityWords } from '../words/page/quantities.ts';

/** One kind of quantity that is typed on the page: the unit it is shown in, and how it is read. */
export interface QuantityKind {
  readonly name: string;
  /** What a bare number means, and what `value` is in. */
  readonly unit: string;
  /** How many significant digits a field shows of it; nobody knows an uncertainty to more than three. */
  readonly digits?: number;
  /** Reads the text; the value is in `unit`. */
  readonly read: (text: string) => Parsed<{ readonly value: number }>;
}

const CENTIMETRES = { ...LENGTH_UNITS, '': LENGTH_UNITS.cm };
const KELVIN: TypedUnit = { symbol: '°C', scale: 1 };
const MPS: TypedUnit = { symbol: 'm/s', scale: 1 };

/** Everything typed on the page except the lengths of marks. What is taken stands in `LIMITS`. */
export const QUANTITIES = {
  forkHz: {
    name: quantityWords.pitch,
    unit: 'Hz',
    read: (text: string) => scaled(parseStamp(text), (read) => read.frequencyHz),
  },
  uncertaintyHz: {
    name: quantityWords.uncertainty,
    unit: 'Hz',
    digits: 3,
    read: (text: string) =>
      scaled(parseForkUncertainty(text, quantityWords.uncertainty), (read) => read.standardUncertaintyHz),
  },
  diameterMm: {
    name: quantityWords.diameter,
    unit: 'mm',
    read: (text: string) => scaled(parseDiameter(text), (read) => read.diameterM * 1000),
  },
  travelCm: plain(quantityWords.travel, CENTIMETRES, LIMITS.travelM, quantityWords.lengthUnits),
  zeroOffsetCm: plain(quantityWords.zeroOffset, CENTIMETRES, LIMITS.zeroOffsetM, quantityWords.lengthUnits),
  readingMm: {
    name: quantityWords.reading,
    unit: 'mm',
    read: (text: string) =>
      scaled(
        parseReadingUncertainty(text, quantityWords.reading),
        (read) => read.standardUncertaintyM * 1000,
      ),
  },
  temperatureC: {
    name: quantityWords.temperature,
    unit: '°C',
    read: (text: string) => scaled(parseTemperature(text), (read) => read.temperatureC),
  },
  temperatureUncertaintyC: plain(
    quantityWords.uncertainty,
    { '': KELVIN, c: KELVIN, k: KELVIN },
    LIMITS.temperatureStandardUncertaintyC,
    quantityWords.kelvinUnits,
  ),
  humidityPct: {
    name: quantityWords.humidity,
    unit: '%',
    read: (text: string) => scaled(parseHumidity(text), (read) => read.humidityPct),
  },
  pressureHpa: {
    name: quantityWords.pressure,
    unit: 'hPa',
    read: (text: string) => scaled(parsePressure(text), (read) => read.pressurePa / 100),
  },
  speedMps: plain(quantityWords.speed, { '': MPS, 'm/s': MPS }, LIMITS.speedMps, quantityWords.speedUnits),
} as const satisfies Record<string, QuantityKind>;

/** A quantity that only this page reads; its value is in the unit of a plain number. */
function plain(
  name: string,
  units: Readonly<Record<'', TypedUnit>> & Readonly<Record<string, TypedUnit>>,
  limit: Limit,
  known: string,
): QuantityKind {
  const { symbol, scale } = units[''];
  return {
    name,
    unit: symbol,
    read: (text) => scaled(parseQuantity(text, { name, units, limit, known }), (read) => read.si / scale),
  };
}

function scaled<T>(parsed: Parsed<T>, toValue: (read: T) => number): Parsed<{ readonly value: number }> {
  return parsed.ok ? { ok: true, value: Number(toValue(parsed).toPrecision(12)) } : parsed;
}
