import { airProperties } from './airProperties.ts';
import type { Filling } from './gases.ts';
import { divide, multiply, squareRoot } from '../numeric/complex.ts';
import type { Complex } from '../numeric/complex.ts';
import { requirePositive } from '../numeric/requireInRange.ts';

/** What the walls of a round tube do to a plane wave in it. */
export interface WallLoss {
  /** Phase speed in the tube over that in free air, below 1. */
  readonly speedRatio: number;
  /** Loss of amplitude, nepers per metre. */
  readonly attenuationNpPerM: number;
}

/**
 * Slowing and damping of a plane wave by viscosity and heat conduction at the wall of a smooth round tube, exact for
 * every ratio of radius to boundary layer: k = (ω/c)·√[(1 + (γ−1)·F(√Pr·s)) / (1 − F(s))], F(s) = 2J₁(s)/(s·J₀(s)),
 * s = √(−i)·a√(ωρ/η).
 * @param radiusM  inside radius, > 0
 * @param frequencyHz  > 0
 * @param temperatureC  -30..80
 * @param freeSpeedMps  speed in free air, for the attenuation
 * @throws RangeError naming the argument, its range and the value
 * @see Zwikker & Kosten 1949, Sound Absorbing Materials, ch. II; Keefe 1984, J. Acoust. Soc. Am. 75, 58
 * @example
 * 343.3595 * (wallLoss(0.015, 512).speedRatio - 1) // → -1.63
 */
export function wallLoss(
  radiusM: number,
  frequencyHz: number,
  temperatureC = 20,
  freeSpeedMps = 331.3 * Math.sqrt(1 + temperatureC / 273.15),
  filling: Filling = 'air',
): WallLoss {
  requirePositive('radiusM', radiusM);
  requirePositive('frequencyHz', frequencyHz);
  requirePositive('freeSpeedMps', freeSpeedMps);
  const air = airProperties(temperatureC, filling);
  const angular = 2 * Math.PI * frequencyHz;
  const size = radiusM * Math.sqrt((angular * air.densityKgPerM3) / air.viscosityPaS);
  const viscous = layerFunction(size);
  const thermal = layerFunction(size * air.rootPrandtl);
  const excess = air.heatRatio - 1;
  const ratio = squareRoot(
    divide({ re: 1 + excess * thermal.re, im: excess * thermal.im }, { re: 1 - viscous.re, im: -viscous.im }),
  );
  return { speedRatio: 1 / ratio.re, attenuationNpPerM: (angular / freeSpeedMps) * -ratio.im };
}

/** F(s) for s = size·√(−i): mean over the cross-section of the boundary layer's profile. */
function layerFunction(size: number): Complex {
  const s: Complex = { re: size * Math.SQRT1_2, im: -size * Math.SQRT1_2 };
  const ratio = size < 100 ? besselRatio(s) : besselRatioFarOut(s);
  const quotient = divide(ratio, s);
  return { re: 2 * quotient.re, im: 2 * quotient.im };
}

/** J₁(s)/J₀(s) by downward recurrence of J_n/J_{n−1} = 1/(2n/s − J_{n+1}/J_n), which is stable in this direction. */
function besselRatio(s: Complex): Complex {
  let ratio: Complex = { re: 0, im: 0 };
  for (let n = Math.ceil(Math.hypot(s.re, s.im)) + 40; n >= 1; n -= 1) {
    const lead = divide({ re: 2 * n, im: 0 }, s);
    ratio = divide({ re: 1, im: 0 }, { re: lead.re - ratio.re, im: lead.im - ratio.im });
  }
  return ratio;
}

/**
 * J₁(s)/J₀(s) far from the origin below the real axis, where J behaves as one Hankel function alone; four terms of its
 * expansion (Abramowitz & Stegun 9.2.7), good to |s|⁻⁴.
 */
function besselRatioFarOut(s: Complex): Complex {
  // With w = 1/s and i·w the series' variable: H_ν ∝ Σ (i/s)^k·a_k(ν), the common exponential cancels.
  const w = divide({ re: 0, im: 1 }, s);
  const series = (a: readonly number[]): Complex => {
    let sum: Complex = { re: 0, im: 0 };
    for (let k = a.length - 1; k >= 0; k -= 1) {
      sum = multiply(sum, w);
      sum = { re: sum.re + a[k], im: sum.im };
    }
    return sum;
  };
  // a_k(ν) = ((4ν²−1)(4ν²−9)…)/(k!·8^k); for ν = 1 and ν = 0.
  const upper = series([1, 3 / 8, -15 / 128, 105 / 1024]);
  const lower = series([1, -1 / 8, 9 / 128, -225 / 3072]);
  // The phase between orders 0 and 1 is a quarter turn.
  return multiply({ re: 0, im: -1 }, divide(upper, lower));
}
