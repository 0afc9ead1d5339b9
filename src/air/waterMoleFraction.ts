import { requireInRange } from './requireInRange.ts';
import { saturationPressurePa } from './saturationPressure.ts';
import type { SaturationForm } from './saturationPressure.ts';

/**
 * Mole fraction of water vapour in moist air, h·f·psv/p with the enhancement factor f.
 * @param temperatureC  -60..100
 * @param humidityPct  0..100
 * @param pressurePa  20 000..120 000
 * @throws RangeError outside of those ranges
 * @see Cramer 1993, J. Acoust. Soc. Am. 93, 2510, appendix
 * @example
 * waterMoleFraction(20, 50, 101_325) // → 0.0116
 */
export function waterMoleFraction(
  temperatureC: number,
  humidityPct: number,
  pressurePa: number,
  form: SaturationForm = 'davis',
): number {
  requireInRange('humidityPct', humidityPct, 0, 100);
  requireInRange('pressurePa', pressurePa, 20_000, 120_000);
  const enhancement = 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * temperatureC * temperatureC;
  return ((humidityPct / 100) * enhancement * saturationPressurePa(temperatureC, form)) / pressurePa;
}
