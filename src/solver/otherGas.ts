import { GAS_CONSTANT, GASES, IDEAL_GAS_UNCERTAINTY, speedInGasMps } from '../air/gases.ts';
import type { Gas } from '../air/gases.ts';
import type { KnownSpeed } from './knownSpeed.ts';

export interface GasMatch {
  readonly gas: Gas;
  readonly speedMps: number;
  /** Measured minus the gas's speed over the uncertainty of that difference. */
  readonly deviation: number;
}

/**
 * Gases by how well their speed agrees with a measured one, best first.
 * @example
 * matchGases({ speedMps: 1005, standardUncertaintyMps: 3 }, 20)[0].gas.id // → 'helium'
 */
export function matchGases(
  speed: KnownSpeed,
  temperatureC: number,
  temperatureStandardUncertaintyC = 0.5,
  gases: readonly Gas[] = GASES,
): readonly GasMatch[] {
  return gases
    .map((gas): GasMatch => {
      const speedMps = speedInGasMps(gas, temperatureC);
      const fromTemperature = (0.5 * speedMps * temperatureStandardUncertaintyC) / (temperatureC + 273.15);
      const doubt = Math.hypot(
        speed.standardUncertaintyMps,
        fromTemperature,
        IDEAL_GAS_UNCERTAINTY * speedMps,
      );
      return { gas, speedMps, deviation: (speed.speedMps - speedMps) / doubt };
    })
    .sort((one, other) => Math.abs(one.deviation) - Math.abs(other.deviation));
}

/**
 * γ/M of a gas from the speed in it, mol/kg: c²/RT; with M known this gives γ, with γ known M.
 * @example
 * (heatRatioPerMolarMass({ speedMps: 343.4, standardUncertaintyMps: 0.3 }, 20).value * 0.02897).toFixed(2) // → '1.40'
 */
export function heatRatioPerMolarMass(
  speed: KnownSpeed,
  temperatureC: number,
  temperatureStandardUncertaintyC = 0.5,
): { readonly value: number; readonly standardUncertainty: number } {
  const kelvin = temperatureC + 273.15;
  if (!(kelvin > 0)) throw new RangeError(`temperatureC must be above -273.15, got ${temperatureC}`);
  const value = speed.speedMps ** 2 / (GAS_CONSTANT * kelvin);
  const relative = Math.hypot(
    (2 * speed.standardUncertaintyMps) / speed.speedMps,
    temperatureStandardUncertaintyC / kelvin,
  );
  return { value, standardUncertainty: relative * value };
}
