import { requireInRange } from '../numeric/requireInRange.ts';

/** A, B, C and D of CIPM-81/91. */
const COEFFICIENTS = [1.2378847e-5, -1.9121316e-2, 33.93711047, -6343.1645] as const;

/**
 * Saturation vapour pressure of water over water, exp(AT² + BT + C + D/T), T in kelvin.
 * @param temperatureC  -60..100
 * @returns pascals
 * @throws RangeError outside of that range
 * @see Davis 1992, Metrologia 29, 67
 * @example
 * saturationPressurePa(20) // → 2339
 */
export function saturationPressurePa(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, -60, 100);
  const kelvin = temperatureC + 273.15;
  const [a, b, c, d] = COEFFICIENTS;
  return Math.exp(a * kelvin * kelvin + b * kelvin + c + d / kelvin);
}
