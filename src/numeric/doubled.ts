/**
 * The same values with as many zeros behind them: room for more in a list of numbers that grows.
 * @example
 * doubled(new Float64Array([1, 2])).length // → 4
 */
export function doubled(values: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * values.length);
  larger.set(values);
  return larger;
}
