/** Normal deviates of the levels at which χ² is asked for here. */
const DEVIATE = { 0.95: 1.6448536, 0.999: 3.0902323 } as const;

/**
 * Limit that χ² exceeds by chance once in twenty times, or once in a thousand.
 * @param degreesOfFreedom  ν = 1, 2, 3…
 * @throws RangeError if ν is below 1
 * @see Wilson & Hilferty 1931, Proc. Natl. Acad. Sci. 17, 684; at 95 % low by 2.5 % (ν = 1), at most 1 % above; at 99.9 %
 *   high by 3.1 % (ν = 1), 2.3 % (ν = 2), less above
 * @example
 * chiSquaredLimit(10).toFixed(1) // → '18.3'
 */
export function chiSquaredLimit(degreesOfFreedom: number, level: keyof typeof DEVIATE = 0.95): number {
  if (!(degreesOfFreedom >= 1))
    throw new RangeError(`degreesOfFreedom must be >= 1, got ${degreesOfFreedom}`);
  const spread = 2 / (9 * degreesOfFreedom);
  return degreesOfFreedom * (1 - spread + DEVIATE[level] * Math.sqrt(spread)) ** 3;
}
