import type { Filling } from './gases.ts';

/** Air, as far as it decides the speed of sound. Each quantity with its standard uncertainty. */
export interface AirState {
  /** What is in the tube: of another gas than air only the temperature counts. */
  readonly filling: Filling;
  readonly temperatureC: number;
  readonly temperatureStandardUncertaintyC: number;
  /** Relative humidity, 0..100 %. */
  readonly humidityPct: number;
  readonly humidityStandardUncertaintyPct: number;
  readonly pressurePa: number;
  readonly pressureStandardUncertaintyPa: number;
  /** Mole fraction, e.g. 0.0004. */
  readonly co2MoleFraction: number;
  readonly co2StandardUncertainty: number;
}

/** What may be known about the air; null or absent where it was not read. */
export interface AirReadings {
  /** What is in the tube; air where nobody says. */
  readonly filling?: Filling;
  readonly temperatureC: number;
  readonly temperatureStandardUncertaintyC?: number | null;
  readonly humidityPct?: number | null;
  readonly pressurePa?: number | null;
  /** Mole fraction. */
  readonly co2MoleFraction?: number | null;
}

/** Stands in for what was not read: common indoor air, wide enough to cover most rooms near sea level. */
export const USUAL_AIR: AirState = {
  filling: 'air',
  temperatureC: 20,
  temperatureStandardUncertaintyC: 5,
  humidityPct: 50,
  humidityStandardUncertaintyPct: 20,
  pressurePa: 101_325,
  pressureStandardUncertaintyPa: 2_000,
  co2MoleFraction: 0.0004,
  co2StandardUncertainty: 0.0003,
};

// What instruments of a school read to. Common practice, no source.
export const THERMOMETER_STANDARD_UNCERTAINTY_C = 0.5;
const HYGROMETER_PCT = 5;
const BAROMETER_PA = 200;
/** Mole fraction: 50 ppm. */
const CO2_METER = 5e-5;

/**
 * Complete air from what was read: the rest as in usual indoor air, with the uncertainty of not knowing it.
 * @param readings  temperature in °C, humidity in %, pressure in Pa, carbon dioxide as a mole fraction
 * @example
 * airFromReadings({ temperatureC: 22, humidityPct: 40 }).pressurePa // → 101325
 */
export function airFromReadings(readings: AirReadings): AirState {
  const { humidityPct = null, pressurePa = null, co2MoleFraction = null } = readings;
  return {
    filling: readings.filling ?? 'air',
    temperatureC: readings.temperatureC,
    temperatureStandardUncertaintyC:
      readings.temperatureStandardUncertaintyC ?? THERMOMETER_STANDARD_UNCERTAINTY_C,
    humidityPct: humidityPct ?? USUAL_AIR.humidityPct,
    humidityStandardUncertaintyPct:
      humidityPct === null ? USUAL_AIR.humidityStandardUncertaintyPct : HYGROMETER_PCT,
    pressurePa: pressurePa ?? USUAL_AIR.pressurePa,
    pressureStandardUncertaintyPa:
      pressurePa === null ? USUAL_AIR.pressureStandardUncertaintyPa : BAROMETER_PA,
    co2MoleFraction: co2MoleFraction ?? USUAL_AIR.co2MoleFraction,
    co2StandardUncertainty: co2MoleFraction === null ? USUAL_AIR.co2StandardUncertainty : CO2_METER,
  };
}

/**
 * The same where even the temperature may not have been read: of air then nothing is known, of another gas its kind.
 * @example
 * airOrNone({ filling: 'helium', temperatureC: null })?.temperatureStandardUncertaintyC // → 5
 */
export function airOrNone(
  readings: Omit<AirReadings, 'temperatureC'> & { readonly temperatureC: number | null },
): AirState | null {
  const { temperatureC, filling = 'air' } = readings;
  if (temperatureC !== null) return airFromReadings({ ...readings, temperatureC });
  return filling === 'air' ? null : { ...USUAL_AIR, filling };
}
