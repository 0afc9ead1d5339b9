import { parseDecimal, shorten } from '../marks/parseDecimal.ts';
import type { Parsed } from '../marks/parseDecimal.ts';
import {
  parseDiameter,
  parseFrequency,
  parseHumidity,
  parsePressure,
  parseTemperature,
} from '../marks/parseQuantities.ts';

/** One kind of quantity that is typed on the page: the unit it is shown in, and how it is read. */
export interface QuantityKind {
  readonly name: string;
  /** What a bare number means, and what `value` is in. */
  readonly unit: string;
  /** Reads the text; the value is in `unit`. */
  readonly read: (text: string) => Parsed<{ readonly value: number }>;
}

const FORK_RANGE_HZ = [100, 2100] as const;
const LENGTH_UNITS_CM = { '': 1, cm: 1, mm: 0.1, m: 100 };

/** Everything typed on the page except the lengths of marks. Ranges are what the bench can work with. */
export const QUANTITIES = {
  forkHz: { name: 'pitch', unit: 'Hz', read: readFork },
  uncertaintyHz: plain('uncertainty', 'Hz', { '': 1, hz: 1 }, [0.001, 50]),
  diameterMm: {
    name: 'diameter',
    unit: 'mm',
    read: (text: string) => scaled(parseDiameter(text), (read) => read.diameterM * 1000),
  },
  travelCm: plain('longest column', 'cm', LENGTH_UNITS_CM, [10, 500]),
  zeroOffsetCm: plain('zero offset', 'cm', LENGTH_UNITS_CM, [-50, 50]),
  readingMm: plain('reading uncertainty', 'mm', { '': 1, mm: 1, cm: 10 }, [0.05, 50]),
  temperatureC: {
    name: 'temperature',
    unit: '°C',
    read: (text: string) => scaled(parseTemperature(text), (read) => read.temperatureC),
  },
  temperatureUncertaintyC: plain('uncertainty', '°C', { '': 1, '°c': 1, c: 1, k: 1 }, [0.01, 10]),
  humidityPct: {
    name: 'humidity',
    unit: '%',
    read: (text: string) => scaled(parseHumidity(text), (read) => read.humidityPct),
  },
  pressureHpa: {
    name: 'pressure',
    unit: 'hPa',
    read: (text: string) => scaled(parsePressure(text), (read) => read.pressurePa / 100),
  },
  speedMps: plain('speed', 'm/s', { '': 1, 'm/s': 1 }, [100, 1500]),
} as const satisfies Record<string, QuantityKind>;

function readFork(text: string): Parsed<{ readonly value: number }> {
  const parsed = parseFrequency(text);
  if (!parsed.ok) return parsed;
  const [lowest, highest] = FORK_RANGE_HZ;
  if (parsed.frequencyHz < lowest || parsed.frequencyHz > highest) {
    return {
      ok: false,
      message: `The bench listens for forks of ${lowest} to ${highest} Hz, got ${parsed.frequencyHz} Hz.`,
    };
  }
  return { ok: true, value: parsed.frequencyHz };
}

/** A quantity that only this page reads. */
function plain(
  name: string,
  unit: string,
  units: Readonly<Record<string, number>>,
  [lowest, highest]: readonly [number, number],
): QuantityKind {
  return {
    name,
    unit,
    read(text) {
      const parsed = parseDecimal(text, name);
      if (!parsed.ok) return parsed;
      const scale = units[parsed.unit.toLowerCase().replaceAll(' ', '')];
      if (scale === undefined) {
        return { ok: false, message: `“${shorten(parsed.unit)}” is no unit for the ${name}. Use ${unit}.` };
      }
      const value = Number((parsed.value * scale).toPrecision(12));
      if (value >= lowest && value <= highest) return { ok: true, value };
      return {
        ok: false,
        message: `The ${name} must be ${lowest}..${highest} ${unit}, got ${value} ${unit}.`,
      };
    },
  };
}

function scaled<T>(parsed: Parsed<T>, toValue: (read: T) => number): Parsed<{ readonly value: number }> {
  return parsed.ok ? { ok: true, value: Number(toValue(parsed).toPrecision(12)) } : parsed;
}
