import { besselRatio } from './besselIntegrals.ts';
import type { ColumnGas } from './columnGas.ts';
import { minus, plus, product, quotient, root, scaled } from './complexNumber.ts';
import type { ComplexNumber } from './complexNumber.ts';

/** A plane wave between walls that drag and cool it. */
export interface TubeWave {
  /** Attenuation (Np/m) and phase (rad/m). */
  readonly propagation: ComplexNumber;
  /** Pressure over flow speed, Pa s/m. */
  readonly impedance: ComplexNumber;
}

/**
 * A round tube as a transmission line: series impedance jωρ/(1 − F(viscous)), shunt admittance
 * (jω/ρc²)·(1 + (γ − 1)·F(thermal)), with F(s) = 2J₁(s)/(s·J₀(s)), s = a√(−jωρ/η), and √Pr times that.
 * @see Zwikker & Kosten 1949, Sound Absorbing Materials, ch. II
 */
export function tubeWave(gas: ColumnGas, radiusM: number, frequencyHz: number): TubeWave {
  const angular = 2 * Math.PI * frequencyHz;
  const { densityKgPerM3: density, speedMps, heatRatio } = gas;
  const layers = radiusM * Math.sqrt((angular * density) / gas.viscosityPaS);
  const viscous = layerMean(layers);
  const thermal = layerMean(layers * Math.sqrt(gas.prandtl));
  const series = quotient([0, angular * density], minus([1, 0], viscous));
  const shunt = product(
    [0, angular / (density * speedMps * speedMps)],
    plus([1, 0], scaled(thermal, heatRatio - 1)),
  );
  return { propagation: root(product(series, shunt)), impedance: root(quotient(series, shunt)) };
}

/** F(s) for s = layers·√(−j). */
function layerMean(layers: number): ComplexNumber {
  const s: ComplexNumber = [layers * Math.SQRT1_2, -layers * Math.SQRT1_2];
  return quotient(scaled(besselRatio(s), 2), s);
}

/** Phase speed, m/s. */
export function phaseSpeedMps(gas: ColumnGas, radiusM: number, frequencyHz: number): number {
  return (2 * Math.PI * frequencyHz) / tubeWave(gas, radiusM, frequencyHz).propagation[1];
}
