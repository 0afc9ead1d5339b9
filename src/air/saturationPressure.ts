import { requireInRange } from './requireInRange.ts';

/** Which fit of the saturation vapour pressure: Giacomo 1981 (in Cramer's appendix) or Davis 1992 (CIPM-81/91). */
export type SaturationForm = 'giacomo' | 'davis';

const COEFFICIENTS = {
  giacomo: [1.2811805e-5, -1.9509874e-2, 34.04926034, -6353.6311],
  davis: [1.2378847e-5, -1.9121316e-2, 33.93711047, -6343.1645],
} as const;

/**
 * Saturation vapour pressure of water over water, exp(AT² + BT + C + D/T), T in kelvin.
 * @param temperatureC  -60..100
 * @returns pascals
 * @throws RangeError outside of that range
 * @see Giacomo 1981, Metrologia 18, 33; Davis 1992, Metrologia 29, 67
 * @example
 * saturationPressurePa(20) // → 2339
 */
export function saturationPressurePa(temperatureC: number, form: SaturationForm = 'davis'): number {
  requireInRange('temperatureC', temperatureC, -60, 100);
  const kelvin = temperatureC + 273.15;
  const [a, b, c, d] = COEFFICIENTS[form];
  return Math.exp(a * kelvin * kelvin + b * kelvin + c + d / kelvin);
}
