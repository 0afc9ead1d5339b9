/** A gas as far as a column feels it. */
export interface ColumnGas {
  /** Speed of sound in the open. */
  readonly speedMps: number;
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  readonly heatRatio: number;
  /** Viscosity times specific heat over conductivity. */
  readonly prandtl: number;
}

export interface AirMixture {
  readonly temperatureC: number;
  readonly humidityPct: number;
  /** Mole fraction, 0.0004 outdoors. */
  readonly co2: number;
}

const GAS_CONSTANT = 8.314462618;
const PRESSURE_PA = 101_325;
/** Molar masses, kg/mol, from standard atomic weights; dry air without its CO₂. */
const AIR = { mass: 0.028959, heat: 3.5 };
/** Cp/R: water 4 (three turns), CO₂ near 20 °C 4.45 (37.0 J/(mol K), from memory). */
const WATER = { mass: 0.018015, heat: 4 };
const CARBON_DIOXIDE = { mass: 0.04401, heat: 4.45 };

/**
 * Moist air by another way than Cramer's polynomial: the handbook's 331.45 m/s for dry air of 0 °C with 314 ppm of CO₂,
 * the root of the absolute temperature, and the ideal mixture's √(γ/M).
 * @see Bohn 1988, J. Audio Eng. Soc. 36, 223, for moisture by γ and M; ISO 9613-1:1993, annex B, for the saturation
 *   pressure; U.S. Standard Atmosphere 1976, eqs. 51 and 53, for viscosity and conductivity, those of dry air
 * @example
 * moistAir({ temperatureC: 20, humidityPct: 50, co2: 0.0004 }).speedMps.toFixed(1) // → '344.0'
 */
export function moistAir({ temperatureC, humidityPct, co2 }: AirMixture): ColumnGas {
  const kelvin = temperatureC + 273.15;
  const saturation = 10 ** (4.6151 - 6.8346 * (273.16 / kelvin) ** 1.261);
  const mixture = mix((humidityPct / 100) * saturation, co2);
  const reference = mix(0, 314e-6);
  const stiffness = (mixture.heatRatio * reference.mass) / (reference.heatRatio * mixture.mass);
  const densityKgPerM3 = (PRESSURE_PA * mixture.mass) / (GAS_CONSTANT * kelvin);
  const viscosityPaS = (1.458e-6 * kelvin ** 1.5) / (kelvin + 110.4);
  const conductivity = (2.64638e-3 * kelvin ** 1.5) / (kelvin + 245.4 * 10 ** (-12 / kelvin));
  return {
    speedMps: 331.45 * Math.sqrt((kelvin / 273.15) * stiffness),
    densityKgPerM3,
    viscosityPaS,
    heatRatio: mixture.heatRatio,
    prandtl: (viscosityPaS * mixture.heat * GAS_CONSTANT) / mixture.mass / conductivity,
  };
}

/** Mean molar mass, Cp/R and γ of dry air with parts of water and CO₂. */
function mix(water: number, co2: number): { mass: number; heat: number; heatRatio: number } {
  const dry = 1 - water - co2;
  const mass = dry * AIR.mass + water * WATER.mass + co2 * CARBON_DIOXIDE.mass;
  const heat = dry * AIR.heat + water * WATER.heat + co2 * CARBON_DIOXIDE.heat;
  return { mass, heat, heatRatio: heat / (heat - 1) };
}

/**
 * Other gases near 20 °C: molar mass, Cp/R, viscosity and conductivity at 300 K as in handbooks of chemistry (from
 * memory, good to a per cent or two; speeds to about 0.5 %).
 */
const PURE = {
  helium: { mass: 0.0040026, heat: 2.5, viscosityPaS: 20e-6, conductivity: 0.156 },
  argon: { mass: 0.039948, heat: 2.5, viscosityPaS: 22.7e-6, conductivity: 0.0178 },
  'carbon dioxide': { mass: 0.04401, heat: 4.45, viscosityPaS: 14.9e-6, conductivity: 0.0167 },
} as const;

export type PureGas = keyof typeof PURE;

/** @example pureGas('helium', 20).speedMps.toFixed(0) // → '1007' */
export function pureGas(name: PureGas, temperatureC: number): ColumnGas {
  const { mass, heat, viscosityPaS, conductivity } = PURE[name];
  const kelvin = temperatureC + 273.15;
  const heatRatio = heat / (heat - 1);
  return {
    speedMps: Math.sqrt((heatRatio * GAS_CONSTANT * kelvin) / mass),
    densityKgPerM3: (PRESSURE_PA * mass) / (GAS_CONSTANT * kelvin),
    viscosityPaS,
    heatRatio,
    prandtl: (viscosityPaS * heat * GAS_CONSTANT) / mass / conductivity,
  };
}
