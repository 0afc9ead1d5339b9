import type { KnownSpeed } from './knownSpeed.ts';

export type GasId =
  'dry-air' | 'helium' | 'argon' | 'nitrogen' | 'oxygen' | 'carbon-dioxide' | 'sulfur-hexafluoride';

export interface Gas {
  readonly id: GasId;
  /** γ near room temperature. */
  readonly heatRatio: number;
  readonly molarMassKgPerMol: number;
}

/** Molar gas constant, J/(mol K), exact since 2019 (SI brochure, 9th edition). */
export const GAS_CONSTANT = 8.31446261815324;

/** Gases that a school may have. Molar masses from standard atomic weights; γ near 20 °C from memory. */
export const GASES: readonly Gas[] = [
  { id: 'dry-air', heatRatio: 1.4, molarMassKgPerMol: 0.0289655 },
  { id: 'helium', heatRatio: 1.6667, molarMassKgPerMol: 0.0040026 },
  { id: 'argon', heatRatio: 1.6667, molarMassKgPerMol: 0.039948 },
  { id: 'nitrogen', heatRatio: 1.4, molarMassKgPerMol: 0.0280134 },
  { id: 'oxygen', heatRatio: 1.397, molarMassKgPerMol: 0.0319988 },
  { id: 'carbon-dioxide', heatRatio: 1.293, molarMassKgPerMol: 0.0440095 },
  { id: 'sulfur-hexafluoride', heatRatio: 1.096, molarMassKgPerMol: 0.1460554 },
];

/** Relative standard uncertainty of the ideal-gas speed: γ of a real gas at room conditions. A judgement. */
const IDEAL_UNCERTAINTY = 0.004;

/**
 * Speed of sound in an ideal gas, √(γRT/M).
 * @param temperatureC  above −273.15
 * @returns m/s, for real gases near room conditions within about 0.5 %
 * @throws RangeError at or below absolute zero
 * @see Laplace 1816; any textbook of thermodynamics
 * @example
 * const helium = { id: 'helium', heatRatio: 5 / 3, molarMassKgPerMol: 0.0040026 };
 * speedInGasMps(helium, 20).toFixed(0) // → '1007'
 */
export function speedInGasMps(gas: Gas, temperatureC: number): number {
  if (!(temperatureC > -273.15))
    throw new RangeError(`temperatureC must be above -273.15, got ${temperatureC}`);
  return Math.sqrt((gas.heatRatio * GAS_CONSTANT * (temperatureC + 273.15)) / gas.molarMassKgPerMol);
}

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
      const doubt = Math.hypot(speed.standardUncertaintyMps, fromTemperature, IDEAL_UNCERTAINTY * speedMps);
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
