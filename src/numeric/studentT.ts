/**
 * Factor by which a standard uncertainty with ν degrees of freedom is multiplied for a two-sided interval.
 * @param degreesOfFreedom  ν >= 0.5, need not be whole
 * @param level  0.5..0.9999, 0.95 for the usual interval
 * @throws RangeError naming the argument, its range and the value
 * @see Abramowitz & Stegun 1964, 26.7.1 with 26.5.8 (continued fraction of the incomplete beta function)
 * @example
 * coverageFactor(10).toFixed(3) // → '2.228'
 */
export function coverageFactor(degreesOfFreedom: number, level = 0.95): number {
  if (!(degreesOfFreedom >= 0.5))
    throw new RangeError(`degreesOfFreedom must be >= 0.5, got ${degreesOfFreedom}`);
  if (!(level >= 0.5 && level <= 0.9999)) throw new RangeError(`level must be 0.5..0.9999, got ${level}`);
  const freedom = Math.min(degreesOfFreedom, 1e6);
  let low = 0;
  let high = 1;
  while (insideProbability(high, freedom) < level) high *= 2;
  // Halving is slow but can't fail, and 60 halvings reach the last bit.
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (insideProbability(middle, freedom) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability that |t| stays below a limit. */
function insideProbability(limit: number, freedom: number): number {
  return 1 - incompleteBeta(freedom / (freedom + limit * limit), freedom / 2, 0.5);
}

/** Regularised incomplete beta function I_x(a, b), by Lentz's way through the continued fraction. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front =
    Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
  let product = d;
  for (let m = 1; m < 2000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d || tiny);
    c = 1 + even / c || tiny;
    product *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d || tiny);
    c = 1 + odd / c || tiny;
    product *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return front * product;
}

/** ln Γ(x), x > 0, by Stirling's series after a shift (Abramowitz & Stegun 6.1.41). */
function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  while (z < 12) {
    shift += Math.log(z);
    z += 1;
  }
  const w = 1 / (z * z);
  const series = (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w / 1188)))) / z;
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - shift;
}
