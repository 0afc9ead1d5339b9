import { GAS_CONSTANT, gasOf } from './gases.ts';
import type { Filling } from './gases.ts';
import { requireInRange, requirePositive } from '../numeric/requireInRange.ts';

/** Near 101 kPa. */
const PRESSURE_PA = 101_325;
/** Where gases are tabulated, K. */
const TABULATED_K = 300;
/** Viscosity grows with this power of the absolute temperature near 300 K; conductivity likewise. From memory. */
const VISCOSITY_POWER = 0.7;

export interface AirProperties {
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  /** √Pr. */
  readonly rootPrandtl: number;
  /** Ratio of the specific heats. */
  readonly heatRatio: number;
}

/**
 * Properties of dry air, or of the gas that fills a tube, near 101 kPa that decide the losses at a wall.
 * @param temperatureC  -30..80; the linear forms are good to about 0.1 % for 0..40 °C
 * @throws RangeError outside of that range
 * @see Keefe 1984, J. Acoust. Soc. Am. 75, 58, table of thermodynamic constants, for air; `GASES` for the others
 * @example
 * airProperties(26.85).densityKgPerM3 // → 1.1769
 */
export function airProperties(temperatureC: number, filling: Filling = 'air'): AirProperties {
  requireInRange('temperatureC', temperatureC, -30, 80);
  if (filling !== 'air') return gasProperties(temperatureC, filling);
  const above = temperatureC - 26.85;
  return {
    densityKgPerM3: 1.1769 * (1 - 0.00335 * above),
    viscosityPaS: 1.846e-5 * (1 + 0.0025 * above),
    rootPrandtl: 0.841 * (1 - 0.0002 * above),
    heatRatio: 1.4017 * (1 - 0.00002 * above),
  };
}

function gasProperties(temperatureC: number, filling: Exclude<Filling, 'air'>): AirProperties {
  const { heatRatio, molarMassKgPerMol, viscosityPaS, conductivityWPerMK } = gasOf(filling);
  const kelvin = temperatureC + 273.15;
  const specificHeat = (heatRatio / (heatRatio - 1)) * (GAS_CONSTANT / molarMassKgPerMol);
  return {
    densityKgPerM3: (PRESSURE_PA * molarMassKgPerMol) / (GAS_CONSTANT * kelvin),
    viscosityPaS: viscosityPaS * (kelvin / TABULATED_K) ** VISCOSITY_POWER,
    rootPrandtl: Math.sqrt((viscosityPaS * specificHeat) / conductivityWPerMK),
    heatRatio,
  };
}

/**
 * Thickness of the air that a wall holds back when sound passes along it, √(2η/ρω).
 * @param frequencyHz  > 0
 * @param temperatureC  -30..80
 * @returns metres
 * @throws RangeError naming the argument, its range and the value
 * @see any textbook of acoustics, e.g. Fletcher & Rossing 1998, The Physics of Musical Instruments, section 8.2
 * @example
 * boundaryLayerM(512, 20) // → 0.0001
 */
export function boundaryLayerM(frequencyHz: number, temperatureC: number, filling: Filling = 'air'): number {
  requirePositive('frequencyHz', frequencyHz);
  const { densityKgPerM3, viscosityPaS } = airProperties(temperatureC, filling);
  return Math.sqrt(viscosityPaS / (densityKgPerM3 * Math.PI * frequencyHz));
}
