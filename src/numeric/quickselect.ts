/**
 * The k-th smallest value, found without sorting (quickselect): the values are partitioned around a pivot until the
 * part that holds the k-th is a single value.
 * @param values  at least one; they are reordered
 * @param k  0 for the smallest, below `count`
 * @param count  values that count, from the first on
 * @see Hoare 1961, Algorithm 65: Find, Commun. ACM 4, 321
 * @example
 * quickselect(Float64Array.of(5, 1, 4, 2), 2) // → 4
 */
export function quickselect(values: Float64Array, k: number, count = values.length): number {
  let from = 0;
  let to = count - 1;
  while (from < to) {
    const pivot = values[(from + to) >> 1];
    // Partitions [from, to] into smaller values, equal ones [low, high] and larger ones.
    let low = from;
    let high = to;
    for (let i = from; i <= high;) {
      const value = values[i];
      if (value < pivot) {
        swap(values, i, low);
        low += 1;
        i += 1;
      } else if (value > pivot) {
        swap(values, i, high);
        high -= 1;
      } else i += 1;
    }
    if (k < low) to = low - 1;
    else if (k <= high) return values[k];
    else from = high + 1;
  }
  return values[from];
}

/**
 * Median; of an even number of values the lower one of the two in the middle.
 * @param values  at least one; they are reordered
 * @param count  values that count, from the first on
 * @example
 * lowerMedian(Float64Array.of(7, 1, 3, 5)) // → 3
 */
export const lowerMedian = (values: Float64Array, count = values.length): number =>
  quickselect(values, (count - 1) >> 1, count);

/**
 * Median of values that each count by their weight: the smallest of them with at least half of the weight at or below it.
 * @param values  at least one; they are reordered, and the weights with them
 * @param weights  as many or more, >= 0, not all 0
 * @param count  values that count, from the first on
 * @see Hoare 1961, Algorithm 65: Find, Commun. ACM 4, 321
 * @example
 * weightedMedian(Float64Array.of(3, 1, 2), Float64Array.of(1, 1, 5)) // → 2
 */
export function weightedMedian(values: Float64Array, weights: Float64Array, count = values.length): number {
  /** Weight that still lies at or below the median, from `from` on. */
  let sought = 0;
  for (let i = 0; i < count; i += 1) sought += weights[i] / 2;
  let from = 0;
  let to = count - 1;
  while (from < to) {
    const pivot = values[(from + to) >> 1];
    let low = from;
    let high = to;
    let smaller = 0;
    let equal = 0;
    for (let i = from; i <= high;) {
      const value = values[i];
      if (value < pivot) {
        smaller += weights[i];
        swap(values, i, low);
        swap(weights, i, low);
        low += 1;
        i += 1;
      } else if (value > pivot) {
        swap(values, i, high);
        swap(weights, i, high);
        high -= 1;
      } else {
        equal += weights[i];
        i += 1;
      }
    }
    if (sought <= smaller) to = low - 1;
    else if (sought <= smaller + equal || high === to) return values[low];
    else {
      sought -= smaller + equal;
      from = high + 1;
    }
  }
  return values[from];
}

function swap(values: Float64Array, i: number, j: number): void {
  const value = values[i];
  values[i] = values[j];
  values[j] = value;
}
