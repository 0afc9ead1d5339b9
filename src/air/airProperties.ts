import { requireInRange, requirePositive } from '../numeric/requireInRange.ts';

export interface AirProperties {
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  /** √Pr. */
  readonly rootPrandtl: number;
  /** Ratio of the specific heats. */
  readonly heatRatio: number;
}

/**
 * Properties of dry air near 101 kPa that decide the losses at a wall.
 * @param temperatureC  -30..80; the linear forms are good to about 0.1 % for 0..40 °C
 * @throws RangeError outside of that range
 * @see Keefe 1984, J. Acoust. Soc. Am. 75, 58, table of thermodynamic constants
 * @example
 * airProperties(26.85).densityKgPerM3 // → 1.1769
 */
export function airProperties(temperatureC: number): AirProperties {
  requireInRange('temperatureC', temperatureC, -30, 80);
  const above = temperatureC - 26.85;
  return {
    densityKgPerM3: 1.1769 * (1 - 0.00335 * above),
    viscosityPaS: 1.846e-5 * (1 + 0.0025 * above),
    rootPrandtl: 0.841 * (1 - 0.0002 * above),
    heatRatio: 1.4017 * (1 - 0.00002 * above),
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
export function boundaryLayerM(frequencyHz: number, temperatureC: number): number {
  requirePositive('frequencyHz', frequencyHz);
  const { densityKgPerM3, viscosityPaS } = airProperties(temperatureC);
  return Math.sqrt(viscosityPaS / (densityKgPerM3 * Math.PI * frequencyHz));
}
