/**
 * Limit that χ² exceeds by chance once in twenty times.
 * @param degreesOfFreedom  ν = 1, 2, 3…
 * @throws RangeError if ν is below 1
 * @see Wilson & Hilferty 1931, Proc. Natl. Acad. Sci. 17, 684; within 1 % for ν >= 2, and 2.5 % low at ν = 1
 */
export function chiSquaredLimit95(degreesOfFreedom: number): number {
  if (!(degreesOfFreedom >= 1))
    throw new RangeError(`degreesOfFreedom must be >= 1, got ${degreesOfFreedom}`);
  const spread = 2 / (9 * degreesOfFreedom);
  return degreesOfFreedom * (1 - spread + 1.6448536 * Math.sqrt(spread)) ** 3;
}
