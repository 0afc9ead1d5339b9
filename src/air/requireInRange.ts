/**
 * Guards an argument.
 * @throws RangeError naming the argument, its range and the value
 * @example
 * requireInRange('humidityPct', 45, 0, 100) // → undefined
 */
export function requireInRange(name: string, value: number, lowest: number, highest: number): void {
  if (!(value >= lowest && value <= highest)) {
    throw new RangeError(`${name} must be ${lowest}..${highest}, got ${value}`);
  }
}

/**
 * Guards an argument that must be finite and above zero.
 * @throws RangeError naming the argument and the value
 * @example
 * requirePositive('radiusM', 0.015) // → undefined
 */
export function requirePositive(name: string, value: number): void {
  if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above 0, got ${value}`);
}
