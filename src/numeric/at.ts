/**
 * Entry of a list that must be there.
 * @param index  0..length − 1
 * @throws RangeError naming the range and the index: a fault of the program, which a default would hide
 * @example
 * at([2, 3, 5], 1) // → 3
 */
export function at<T>(values: ArrayLike<T>, index: number): T {
  const value = values[index];
  if (value === undefined) throw new RangeError(`index must be 0..${values.length - 1}, got ${index}`);
  return value;
}
