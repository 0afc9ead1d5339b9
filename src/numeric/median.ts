/**
 * Middle of the values, the upper of the two middle ones where their number is even.
 * @param values  at least one, in any order
 * @throws RangeError where there is none
 * @example
 * median([4, 1, 3, 2]) // → 3
 */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('values must hold at least one, got none');
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}
