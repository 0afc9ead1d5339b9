import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

/** Widest values that are taken for a classroom's; beyond them a unit was mixed up. */
const RANGES = {
  temperatureC: [-30, 60],
  humidityPct: [0, 100],
  pressurePa: [50_000, 110_000],
  frequencyHz: [20, 20_000],
  diameterM: [0.002, 0.5],
} as const;

type Units = Readonly<Record<string, (value: number) => number>>;

const TEMPERATURE_UNITS: Units = {
  '': (value) => value,
  c: (value) => value,
  f: (value) => ((value - 32) * 5) / 9,
  k: (value) => value - 273.15,
};

/** Reads an air temperature: plain numbers and °C alike, also °F and K. Within −30..60 °C. */
export function parseTemperature(text: string): Parsed<{ readonly temperatureC: number }> {
  const read = parse(text, 'temperature', TEMPERATURE_UNITS, '°C, °F or K');
  if (!read.ok) return read;
  const [lowest, highest] = RANGES.temperatureC;
  if (read.si >= lowest && read.si <= highest) return { ok: true, temperatureC: read.si };
  const hint =
    read.unit !== ''
      ? ''
      : read.si > 200
        ? ` For kelvin write ${read.value} K.`
        : ` For Fahrenheit write ${read.value} °F.`;
  return {
    ok: false,
    message: `The temperature must be ${lowest}..${highest} °C, got ${clean(read.si)} °C.${hint}`,
  };
}

/** Reads a relative humidity in %, 0..100. */
export function parseHumidity(text: string): Parsed<{ readonly humidityPct: number }> {
  const read = parse(text, 'humidity', { '': (value) => value, '%': (value) => value }, '%');
  if (!read.ok) return read;
  const [lowest, highest] = RANGES.humidityPct;
  if (read.unit === '' && read.si > 0 && read.si < 1) {
    const message = `${read.value} % is drier than any room. If a fraction is meant, write ${clean(100 * read.value)}; else write ${read.value} %.`;
    return { ok: false, message };
  }
  if (read.si >= lowest && read.si <= highest) return { ok: true, humidityPct: read.si };
  return { ok: false, message: `The humidity must be ${lowest}..${highest} %, got ${clean(read.si)} %.` };
}

const PRESSURE_UNITS: Units = {
  '': (value) => value * 100,
  hpa: (value) => value * 100,
  mbar: (value) => value * 100,
  kpa: (value) => value * 1000,
  pa: (value) => value,
};

/** Reads an air pressure: plain numbers are hPa; also mbar, kPa and Pa. Within 500..1100 hPa. */
export function parsePressure(text: string): Parsed<{ readonly pressurePa: number }> {
  const read = parse(text, 'pressure', PRESSURE_UNITS, 'hPa, mbar, kPa or Pa');
  if (!read.ok) return read;
  const [lowest, highest] = RANGES.pressurePa;
  if (read.si >= lowest && read.si <= highest) return { ok: true, pressurePa: read.si };
  const hint = read.unit === '' ? ' Plain numbers are hPa: sea level has about 1013.' : '';
  return {
    ok: false,
    message: `The pressure must be ${lowest / 100}..${highest / 100} hPa, got ${clean(read.si / 100)} hPa.${hint}`,
  };
}

/** Reads a pitch: plain numbers are Hz; also kHz. Within 20..20 000 Hz. */
export function parseFrequency(text: string): Parsed<{ readonly frequencyHz: number }> {
  const units: Units = { '': (value) => value, hz: (value) => value, khz: (value) => value * 1000 };
  const read = parse(text, 'pitch', units, 'Hz');
  if (!read.ok) return read;
  const [lowest, highest] = RANGES.frequencyHz;
  if (read.si >= lowest && read.si <= highest) return { ok: true, frequencyHz: read.si };
  return { ok: false, message: `The pitch must be ${lowest}..${highest} Hz, got ${clean(read.si)} Hz.` };
}

/** Reads a tube's inside diameter: plain numbers are mm; also cm and m. Within 2..500 mm. */
export function parseDiameter(text: string): Parsed<{ readonly diameterM: number }> {
  const units: Units = {
    '': (value) => value / 1000,
    mm: (value) => value / 1000,
    cm: (value) => value / 100,
    m: (value) => value,
  };
  const read = parse(text, 'diameter', units, 'mm, cm or m');
  if (!read.ok) return read;
  const [lowest, highest] = RANGES.diameterM;
  if (read.si >= lowest && read.si <= highest) return { ok: true, diameterM: read.si };
  const hint = read.unit === '' ? ' Plain numbers are mm.' : '';
  return {
    ok: false,
    message: `The diameter must be ${lowest * 1000}..${highest * 1000} mm, got ${clean(read.si * 1000)} mm.${hint}`,
  };
}

interface Read {
  readonly value: number;
  readonly unit: string;
  readonly si: number;
}

function parse(text: string, name: string, units: Units, known: string): Parsed<Read> {
  const parsed = parseDecimal(text, name);
  if (!parsed.ok) return parsed;
  const convert = units[parsed.unit.toLowerCase().replace(/[°º\s]|deg(rees)?/g, '')];
  if (convert === undefined) {
    return { ok: false, message: `“${shorten(parsed.unit)}” is no unit for the ${name}. Use ${known}.` };
  }
  return { ok: true, value: parsed.value, unit: parsed.unit, si: clean(convert(parsed.value)) };
}

/** Drops the noise of a change of units. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
