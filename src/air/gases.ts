export type GasId =
  'dry-air' | 'helium' | 'argon' | 'nitrogen' | 'oxygen' | 'carbon-dioxide' | 'sulfur-hexafluoride';

/** What a tube may be filled with: moist air, or one of the others, pure and dry. */
export const FILLINGS = [
  'air',
  'helium',
  'argon',
  'nitrogen',
  'oxygen',
  'carbon-dioxide',
  'sulfur-hexafluoride',
] as const;

export type Filling = (typeof FILLINGS)[number];

export interface Gas {
  readonly id: GasId;
  /** γ near room temperature. */
  readonly heatRatio: number;
  readonly molarMassKgPerMol: number;
  /** At 300 K and 100 kPa. */
  readonly viscosityPaS: number;
  readonly conductivityWPerMK: number;
}

/** Molar gas constant, J/(mol K), exact since 2019 (SI brochure, 9th edition). */
export const GAS_CONSTANT = 8.31446261815324;

/**
 * Gases that a school may have. Molar masses from standard atomic weights; γ near 20 °C, viscosity and thermal
 * conductivity from memory of handbooks of chemistry, good to a per cent or two: they decide what walls take.
 */
export const GASES: readonly Gas[] = [
  {
    id: 'dry-air',
    heatRatio: 1.4,
    molarMassKgPerMol: 0.0289655,
    viscosityPaS: 18.5e-6,
    conductivityWPerMK: 0.0262,
  },
  {
    id: 'helium',
    heatRatio: 1.6667,
    molarMassKgPerMol: 0.0040026,
    viscosityPaS: 20e-6,
    conductivityWPerMK: 0.1567,
  },
  {
    id: 'argon',
    heatRatio: 1.6667,
    molarMassKgPerMol: 0.039948,
    viscosityPaS: 22.9e-6,
    conductivityWPerMK: 0.0179,
  },
  {
    id: 'nitrogen',
    heatRatio: 1.4,
    molarMassKgPerMol: 0.0280134,
    viscosityPaS: 17.9e-6,
    conductivityWPerMK: 0.026,
  },
  {
    id: 'oxygen',
    heatRatio: 1.397,
    molarMassKgPerMol: 0.0319988,
    viscosityPaS: 20.8e-6,
    conductivityWPerMK: 0.0263,
  },
  {
    id: 'carbon-dioxide',
    heatRatio: 1.293,
    molarMassKgPerMol: 0.0440095,
    viscosityPaS: 15e-6,
    conductivityWPerMK: 0.0168,
  },
  {
    id: 'sulfur-hexafluoride',
    heatRatio: 1.096,
    molarMassKgPerMol: 0.1460554,
    viscosityPaS: 15.9e-6,
    conductivityWPerMK: 0.013,
  },
];

/**
 * The gas of a tube that isn't filled with air.
 * @throws RangeError for a gas that isn't in the list
 * @example
 * gasOf('argon').molarMassKgPerMol // → 0.039948
 */
export function gasOf(filling: Exclude<Filling, 'air'>): Gas {
  const gas = GASES.find(({ id }) => id === filling);
  if (gas === undefined) throw new RangeError(`filling must be one of the gases, got ${filling}`);
  return gas;
}

/** Relative standard uncertainty of the ideal-gas speed: γ of a real gas at room conditions. A judgement. */
export const IDEAL_GAS_UNCERTAINTY = 0.004;

/**
 * Speed of sound in an ideal gas, √(γRT/M).
 * @param temperatureC  above −273.15
 * @returns m/s, for real gases near room conditions within about 0.5 %
 * @throws RangeError at or below absolute zero
 * @see Laplace 1816; any textbook of thermodynamics
 * @example
 * speedInGasMps(gasOf('helium'), 20).toFixed(0) // → '1007'
 */
export function speedInGasMps(
  gas: Pick<Gas, 'heatRatio' | 'molarMassKgPerMol'>,
  temperatureC: number,
): number {
  if (!(temperatureC > -273.15))
    throw new RangeError(`temperatureC must be above -273.15, got ${temperatureC}`);
  return Math.sqrt((gas.heatRatio * GAS_CONSTANT * (temperatureC + 273.15)) / gas.molarMassKgPerMol);
}
