/**
 * Prefix sums: the sum of any stretch is one difference, however long the stretch.
 * @param values  the first `length` count
 * @param sums  is filled: sums[i] is the sum of the first i values; at least length + 1 places, sums[0] is 0
 * @example
 * const sums = new Float64Array(4);
 * fillPrefixSums(Float64Array.of(1, 2, 4), sums, 3);
 * [...sums] // → [0, 1, 3, 7]
 */
export function fillPrefixSums(values: Float64Array, sums: Float64Array, length: number): void {
  let sum = 0;
  for (let i = 0; i < length; i += 1) {
    sum += values[i];
    sums[i + 1] = sum;
  }
}

/**
 * Sum over [from, to).
 * @param sums  prefix sums, see `fillPrefixSums`
 * @example
 * rangeSum(Float64Array.of(0, 1, 3, 7), 1, 3) // → 6
 */
export const rangeSum = (sums: Float64Array, from: number, to: number): number => sums[to] - sums[from];
