/**
 * Median of values, each counted by its weight: the smallest of them with at least half of the weight at or below it.
 * Found without sorting, by parting around a value again and again (Hoare 1961, "Find"): both arrays are reordered.
 * @param values  at least one
 * @param weights  as many or more, >= 0, not all 0
 * @param count  values that count, from the first on
 */
export const weightedMedian = (values: Float64Array, weights: Float64Array, count = values.length): number =>
  values[placeOfMedian(values, weights, count)];

/** @returns where the median stands afterwards: a whole number needs no box, the median itself would */
function placeOfMedian(values: Float64Array, weights: Float64Array, count: number): number {
  let sought = 0;
  for (let i = 0; i < count; i += 1) sought += weights[i] / 2;
  let from = 0;
  let to = count - 1;
  while (from < to) {
    const pivot = values[(from + to) >> 1];
    // Parts [from, to] into smaller ones, equal ones [low, high] and larger ones.
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
    else if (sought <= smaller + equal || high === to) return low;
    else {
      sought -= smaller + equal;
      from = high + 1;
    }
  }
  return from;
}

/** Ones, as many as were ever needed. */
let ones = new Float64Array(2048).fill(1);

/**
 * The lower median, found in the same way: the values are reordered.
 * @param values  at least one
 * @param count  values that count, from the first on
 */
export const partedMedian = (values: Float64Array, count = values.length): number =>
  values[placeOfPartedMedian(values, count)];

/** The same. @returns where the median stands afterwards */
export function placeOfPartedMedian(values: Float64Array, count = values.length): number {
  if (ones.length < count) ones = new Float64Array(2 * count).fill(1);
  return placeOfMedian(values, ones, count);
}

function swap(values: Float64Array, i: number, j: number): void {
  const value = values[i];
  values[i] = values[j];
  values[j] = value;
}
