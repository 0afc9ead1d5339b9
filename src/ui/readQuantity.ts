import { LIMITS } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';
import type { Parsed } from '../marks/parseDecimal.ts';
import type { QuantityName } from '../marks/parseFault.ts';
import {
  parseCo2,
  parseDiameter,
  parseForkUncertainty,
  parseHumidity,
  parsePressure,
  parseReadingUncertainty,
  parseStamp,
  parseTemperature,
  parseTemperatureUncertainty,
} from '../marks/parseQuantities.ts';
import { LENGTH_UNITS, parseQuantity } from '../marks/parseQuantity.ts';
import type { TypedUnit } from '../marks/parseQuantity.ts';

/** One kind of quantity that is typed on the page: the unit it is shown in, and how it is read. */
export interface QuantityKind {
  /** What a bare number means, and what `value` is in. */
  readonly unit: string;
  /** How many significant digits a field shows of it; nobody knows an uncertainty to more than three. */
  readonly digits?: number;
  /** It may be below zero. */
  readonly isSigned?: true;
  /** Reads the text; the value is in `unit`. */
  readonly read: (text: string) => Parsed<{ readonly value: number }>;
}

const CENTIMETRES = { ...LENGTH_UNITS, '': LENGTH_UNITS.cm };
const MPS: TypedUnit = { symbol: 'm/s', scale: 1 };

/** Everything typed on the page except the lengths of marks. What is taken stands in `LIMITS`. */
export const QUANTITIES = {
  forkHz: {
    unit: 'Hz',
    read: (text: string) => scaled(parseStamp(text), (read) => read.frequencyHz),
  },
  uncertaintyHz: {
    unit: 'Hz',
    digits: 3,
    read: (text: string) =>
      scaled(parseForkUncertainty(text, 'uncertainty'), (read) => read.standardUncertaintyHz),
  },
  diameterMm: {
    unit: 'mm',
    read: (text: string) => scaled(parseDiameter(text), (read) => read.diameterM * 1000),
  },
  travelCm: plain('longest-column', CENTIMETRES, LIMITS.travelM, ['cm', 'mm', 'm']),
  zeroOffsetCm: plain('zero-offset', CENTIMETRES, LIMITS.zeroOffsetM, ['cm', 'mm', 'm']),
  readingMm: {
    unit: 'mm',
    read: (text: string) =>
      scaled(
        parseReadingUncertainty(text, 'reading-uncertainty'),
        (read) => read.standardUncertaintyM * 1000,
      ),
  },
  temperatureC: {
    unit: '°C',
    isSigned: true,
    read: (text: string) => scaled(parseTemperature(text), (read) => read.temperatureC),
  },
  temperatureUncertaintyC: {
    unit: '°C',
    read: (text: string) => scaled(parseTemperatureUncertainty(text), (read) => read.standardUncertaintyC),
  },
  humidityPct: {
    unit: '%',
    read: (text: string) => scaled(parseHumidity(text), (read) => read.humidityPct),
  },
  pressureHpa: {
    unit: 'hPa',
    read: (text: string) => scaled(parsePressure(text), (read) => read.pressurePa / 100),
  },
  co2Ppm: {
    unit: 'ppm',
    read: (text: string) => scaled(parseCo2(text), (read) => read.co2MoleFraction * 1e6),
  },
  speedMps: plain('speed', { '': MPS, 'm/s': MPS }, LIMITS.speedMps, ['m/s']),
} as const satisfies Record<string, QuantityKind>;

/** A quantity that only this page reads; its value is in the unit of a plain number. */
function plain(
  name: QuantityName,
  units: Readonly<Record<'', TypedUnit>> & Readonly<Record<string, TypedUnit>>,
  limit: Limit,
  known: readonly string[],
): QuantityKind {
  const { symbol, scale } = units[''];
  return {
    unit: symbol,
    ...(limit.lowest < 0 ? { isSigned: true } : {}),
    read: (text) => scaled(parseQuantity(text, { name, units, limit, known }), (read) => read.si / scale),
  };
}

function scaled<T>(parsed: Parsed<T>, toValue: (read: T) => number): Parsed<{ readonly value: number }> {
  return parsed.ok ? { ok: true, value: Number(toValue(parsed).toPrecision(12)) } : parsed;
}
