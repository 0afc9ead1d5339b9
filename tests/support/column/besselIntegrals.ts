import { quotient } from './complexNumber.ts';
import type { ComplexNumber } from './complexNumber.ts';

/*
 * Bessel functions from their integrals and power series (Abramowitz & Stegun 1964, ch. 9), slow and plain.
 */

/**
 * J₁(z)/J₀(z) from Bessel's integral, J_n(z) = (1/2π)∫ e^{i(z sin τ − nτ)} dτ (A&S 9.1.21). The trapezoidal rule over a
 * whole period is exact but for J_{N−n}(z), which is nothing once N is a few times |z|. Both are divided by e^{|Im z|}.
 */
export function besselRatio(z: ComplexNumber): ComplexNumber {
  const points = Math.ceil(4 * Math.hypot(z[0], z[1])) + 80;
  const sums = [0, 0, 0, 0];
  for (let k = 0; k < points; k += 1) {
    const angle = (2 * Math.PI * k) / points;
    const sine = Math.sin(angle);
    const size = Math.exp(-z[1] * sine - Math.abs(z[1]));
    sums[0] += size * Math.cos(z[0] * sine);
    sums[1] += size * Math.sin(z[0] * sine);
    sums[2] += size * Math.cos(z[0] * sine - angle);
    sums[3] += size * Math.sin(z[0] * sine - angle);
  }
  return quotient([sums[2], sums[3]], [sums[0], sums[1]]);
}

const EULER = 0.5772156649015329;

/** J₁(x) and Y₁(x), 0 < x < 5, by their power series (A&S 9.1.10, 9.1.11). */
export function besselJ1Y1(x: number): readonly [j1: number, y1: number] {
  const { first, second } = orderOne(x, -1);
  return [first, (2 / Math.PI) * Math.log(x / 2) * first - 2 / (Math.PI * x) - second / Math.PI];
}

/** 2·I₁(x)·K₁(x), x > 0: power series (A&S 9.6.10, 9.6.11), for large x their expansion (9.7.5). */
export function twiceI1K1(x: number): number {
  if (x > 15) {
    const u = 1 / (4 * x * x);
    return (1 - 1.5 * u - 5.625 * u * u) / x;
  }
  if (x < 2) {
    const { first, second } = orderOne(x, 1);
    return 2 * first * (1 / x + Math.log(x / 2) * first - second / 2);
  }
  // K₁ = ∫ e^{−x cosh t}·cosh t dt over t > 0 (A&S 9.6.24): the series would lose its digits here.
  const step = 0.02;
  let k1 = Math.exp(-x) / 2;
  for (let t = step; x * Math.cosh(t) < 60 + x; t += step) k1 += Math.exp(-x * Math.cosh(t)) * Math.cosh(t);
  return 2 * orderOne(x, 1).first * k1 * step;
}

/** Σ (±x²/4)^k/(k!(k+1)!)·x/2, and the same sum weighted by ψ(k+1) + ψ(k+2). */
function orderOne(x: number, sign: 1 | -1): { readonly first: number; readonly second: number } {
  let term = x / 2;
  let harmonic = 0;
  let [first, second] = [0, 0];
  for (let k = 0; k < 60; k += 1) {
    first += term;
    second += term * (2 * harmonic + 1 / (k + 1) - 2 * EULER);
    harmonic += 1 / (k + 1);
    term *= (sign * x * x) / (4 * (k + 1) * (k + 2));
  }
  return { first, second };
}
