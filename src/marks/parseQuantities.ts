import { LIMITS } from '../limits/limits.ts';
import type { Parsed } from './parseDecimal.ts';
import type { QuantityName } from './parseFault.ts';
import { LENGTH_UNITS, parseQuantity } from './parseQuantity.ts';
import type { TypedKind } from './parseQuantity.ts';

const CELSIUS = { symbol: '°C', scale: 1 };
const TEMPERATURE: TypedKind = {
  name: 'temperature',
  limit: LIMITS.temperatureC,
  units: {
    '': CELSIUS,
    c: CELSIUS,
    f: { symbol: '°F', scale: 5 / 9, shift: -160 / 9 },
    k: { symbol: 'K', scale: 1, shift: -273.15 },
  },
  known: ['°C', '°F', 'K'],
  hint: (value) => (value > 200 ? 'kelvin' : 'fahrenheit'),
};

/** Reads an air temperature: plain numbers and °C alike, also °F and K. */
export function parseTemperature(text: string): Parsed<{ readonly temperatureC: number }> {
  const read = parseQuantity(text, TEMPERATURE);
  return read.ok ? { ok: true, temperatureC: read.si } : read;
}

const PERCENT = { symbol: '%', scale: 1 };
const HUMIDITY: TypedKind = {
  name: 'humidity',
  limit: LIMITS.humidityPct,
  units: { '': PERCENT, '%': PERCENT },
  known: ['%'],
};
/** Between 0 and this a plain number is more likely a fraction: no room is that dry. */
const DRIEST_PLAIN_PCT = 1;

const KELVIN = { symbol: '°C', scale: 1 };

/** Reads the standard uncertainty of a temperature: plain numbers and °C are the same as K. */
export function parseTemperatureUncertainty(
  text: string,
  name: QuantityName = 'uncertainty',
): Parsed<{ readonly standardUncertaintyC: number }> {
  const read = parseQuantity(text, {
    name,
    limit: LIMITS.temperatureStandardUncertaintyC,
    units: { '': KELVIN, c: KELVIN, k: KELVIN },
    known: ['°C', 'K'],
  });
  return read.ok ? { ok: true, standardUncertaintyC: read.si } : read;
}

const PPM = { symbol: 'ppm', scale: 1 };
const PER_FRACTION = 1e6;
const CARBON_DIOXIDE: TypedKind = {
  name: 'carbon-dioxide',
  limit: {
    lowest: LIMITS.co2MoleFraction.lowest * PER_FRACTION,
    highest: LIMITS.co2MoleFraction.highest * PER_FRACTION,
  },
  units: { '': PPM, ppm: PPM, '%': { symbol: '%', scale: 1e4 } },
  known: ['ppm', '%'],
};

/** Reads how much carbon dioxide the air has: plain numbers are ppm (parts of a million of its volume); also %. */
export function parseCo2(text: string): Parsed<{ readonly co2MoleFraction: number }> {
  const read = parseQuantity(text, CARBON_DIOXIDE);
  return read.ok ? { ok: true, co2MoleFraction: read.si / PER_FRACTION } : read;
}

/** Reads a relative humidity in %, 0..100. */
export function parseHumidity(text: string): Parsed<{ readonly humidityPct: number }> {
  const read = parseQuantity(text, HUMIDITY);
  if (!read.ok) return read;
  if (read.unit === '' && isHumidityDoubtful(read.si)) {
    return { ok: false, fault: { code: 'doubtful-humidity', value: read.value } };
  }
  return { ok: true, humidityPct: read.si };
}

/** Whether a plain number is asked for its unit, because it is more likely a fraction. */
export function isHumidityDoubtful(humidityPct: number): boolean {
  return humidityPct > 0 && humidityPct < DRIEST_PLAIN_PCT;
}

const HECTOPASCAL = { symbol: 'hPa', scale: 100 };
const PRESSURE: TypedKind = {
  name: 'pressure',
  limit: LIMITS.pressurePa,
  units: {
    '': HECTOPASCAL,
    hpa: HECTOPASCAL,
    mbar: { symbol: 'mbar', scale: 100 },
    kpa: { symbol: 'kPa', scale: 1000 },
    pa: { symbol: 'Pa', scale: 1 },
  },
  known: ['hPa', 'mbar', 'kPa', 'Pa'],
  hint: () => 'plain-hpa',
};

/** Reads an air pressure: plain numbers are hPa; also mbar, kPa and Pa. */
export function parsePressure(text: string): Parsed<{ readonly pressurePa: number }> {
  const read = parseQuantity(text, PRESSURE);
  return read.ok ? { ok: true, pressurePa: read.si } : read;
}

const HERTZ = { symbol: 'Hz', scale: 1 };
const PITCH_UNITS = { '': HERTZ, hz: HERTZ, khz: { symbol: 'kHz', scale: 1000 } };
const PITCH: TypedKind = {
  name: 'pitch',
  limit: LIMITS.pitchHz,
  units: PITCH_UNITS,
  known: ['Hz', 'kHz'],
  hint: () => 'fork-pitches',
};

/** Reads the pitch in use of a fork, measured or stamped: plain numbers are Hz; also kHz. */
export function parseFrequency(text: string): Parsed<{ readonly frequencyHz: number }> {
  const read = parseQuantity(text, PITCH);
  return read.ok ? { ok: true, frequencyHz: read.si } : read;
}

/** Reads the pitch stamped on a fork, likewise. */
export function parseStamp(text: string): Parsed<{ readonly frequencyHz: number }> {
  const read = parseQuantity(text, { ...PITCH, limit: LIMITS.stampedHz });
  return read.ok ? { ok: true, frequencyHz: read.si } : read;
}

const MILLIMETRES = { ...LENGTH_UNITS, '': LENGTH_UNITS.mm };
const DIAMETER: TypedKind = {
  name: 'diameter',
  limit: LIMITS.diameterM,
  units: MILLIMETRES,
  known: ['mm', 'cm', 'm'],
  hint: () => 'plain-mm',
};

/** Reads a tube's inside diameter: plain numbers are mm; also cm and m. */
export function parseDiameter(text: string): Parsed<{ readonly diameterM: number }> {
  const read = parseQuantity(text, DIAMETER);
  return read.ok ? { ok: true, diameterM: read.si } : read;
}

/** Reads the standard uncertainty of a reading, or of a length in a table: plain numbers are mm; also cm and m. */
export function parseReadingUncertainty(
  text: string,
  name: QuantityName = 'length-uncertainty',
): Parsed<{ readonly standardUncertaintyM: number }> {
  const read = parseQuantity(text, {
    name,
    limit: LIMITS.readingStandardUncertaintyM,
    units: MILLIMETRES,
    known: ['mm', 'cm', 'm'],
  });
  return read.ok ? { ok: true, standardUncertaintyM: read.si } : read;
}

/** Reads how much louder than the fork alone a resonance was, dB. */
export function parseRise(text: string): Parsed<{ readonly riseDb: number }> {
  const decibel = { symbol: 'dB', scale: 1 };
  const units = { '': decibel, db: decibel };
  const read = parseQuantity(text, { name: 'rise', limit: LIMITS.riseDb, units, known: ['dB'] });
  return read.ok ? { ok: true, riseDb: read.si } : read;
}

/** Reads the standard uncertainty of a centre's place, half widths of the resonance. */
export function parseCentreUncertainty(text: string): Parsed<{ readonly halfWidths: number }> {
  const read = parseQuantity(text, {
    name: 'centre-uncertainty',
    limit: LIMITS.centreStandardUncertaintyHalfWidths,
    units: { '': { symbol: 'half widths', scale: 1 } },
    known: ['half widths'],
  });
  return read.ok ? { ok: true, halfWidths: read.si } : read;
}

/** Reads the standard uncertainty of a fork's pitch, Hz. */
export function parseForkUncertainty(
  text: string,
  name: QuantityName = 'fork-uncertainty',
): Parsed<{ readonly standardUncertaintyHz: number }> {
  const read = parseQuantity(text, {
    name,
    limit: LIMITS.forkStandardUncertaintyHz,
    units: { '': HERTZ, hz: HERTZ },
    known: ['Hz'],
  });
  return read.ok ? { ok: true, standardUncertaintyHz: read.si } : read;
}
