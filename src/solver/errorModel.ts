/**
 * Errors of n measured values: each its own, some shared within a group (a fork's pitch), some shared by all (the rule).
 * Their covariance is diag(variances) + Σ over groups q·qᵀ + Σ over common errors q·qᵀ.
 */
export interface ErrorModel {
  /** Each value's own variance, > 0. */
  readonly variances: readonly number[];
  /** Group of each value, any numbers. */
  readonly groups: readonly number[];
  /** Effect of its group's error on each value, one standard uncertainty large. */
  readonly groupErrors: readonly number[];
  /** For each common error its effect on every value, one standard uncertainty large. */
  readonly commonErrors: readonly (readonly number[])[];
}

/** The inverse of a covariance, as far as a fit needs it. */
export interface InverseCovariance {
  times(values: ArrayLike<number>): Float64Array;
  readonly diagonal: Float64Array;
}

/** Values that are independent, with these variances. */
export function independentErrors(variances: readonly number[]): ErrorModel {
  const zeros = variances.map(() => 0);
  return { variances, groups: zeros, groupErrors: zeros, commonErrors: [] };
}

/**
 * Inverse of the errors' covariance by the Sherman–Morrison–Woodbury identity: work and memory grow with n, not n³.
 * Plain loops over typed arrays: a table of thousands of marks is fitted a hundred times while its blunders are found.
 * @see Golub & Van Loan 2013, Matrix Computations, 2.1.4
 */
export function invertCovariance(model: ErrorModel): InverseCovariance {
  const { commonErrors } = model;
  const n = model.variances.length;
  const weights = Float64Array.from(model.variances, (variance) => 1 / variance);
  const errors = Float64Array.from(model.groupErrors);
  const { places, count } = placesOf(model.groups);
  const shared = new Float64Array(count);
  for (let i = 0; i < n; i += 1) {
    const q = errors[i] ?? 0;
    const place = places[i] ?? 0;
    shared[place] = (shared[place] ?? 0) + q * q * (weights[i] ?? 0);
  }

  const groupedTimes = (values: ArrayLike<number>): Float64Array => {
    const sums = new Float64Array(count);
    for (let i = 0; i < n; i += 1) {
      const place = places[i] ?? 0;
      sums[place] = (sums[place] ?? 0) + (errors[i] ?? 0) * (weights[i] ?? 0) * (values[i] ?? 0);
    }
    const result = new Float64Array(n);
    for (let i = 0; i < n; i += 1) {
      const place = places[i] ?? 0;
      const pull = (sums[place] ?? 0) / (1 + (shared[place] ?? 0));
      result[i] = (weights[i] ?? 0) * ((values[i] ?? 0) - (errors[i] ?? 0) * pull);
    }
    return result;
  };

  const solved = commonErrors.map(groupedTimes);
  const core = invertMatrix(
    commonErrors.map((one, j) => solved.map((other, k) => (j === k ? 1 : 0) + dot(one, other))),
  );
  /** Row i of the solved columns, times the core's inverse or weights: Σ over j of solved[j][i]·pulls[j]. */
  const across = (i: number, pulls: ArrayLike<number>): number => {
    let sum = 0;
    for (let j = 0; j < solved.length; j += 1) sum += (solved[j]?.[i] ?? 0) * (pulls[j] ?? 0);
    return sum;
  };
  const diagonal = new Float64Array(n);
  const lines = new Float64Array(core.length);
  for (let i = 0; i < n; i += 1) {
    const weight = weights[i] ?? 0;
    const q = (errors[i] ?? 0) * weight;
    const own = weight - (q * q) / (1 + (shared[places[i] ?? 0] ?? 0));
    for (let k = 0; k < core.length; k += 1) lines[k] = across(i, core[k] ?? []);
    diagonal[i] = own - across(i, lines);
  }
  return {
    diagonal,
    times(values) {
      const result = groupedTimes(values);
      const projections = solved.map((column) => dot(column, values));
      const pulls = core.map((row) => dot(row, projections));
      for (let i = 0; i < n; i += 1) result[i] = (result[i] ?? 0) - across(i, pulls);
      return result;
    },
  };
}

/** Each value's group counted from 0 in the order in which they appear: faster to look up than any number. */
function placesOf(groups: readonly number[]): { readonly places: Int32Array; readonly count: number } {
  const known = new Map<number, number>();
  const places = Int32Array.from(groups, (group) => {
    const place = known.get(group) ?? known.size;
    known.set(group, place);
    return place;
  });
  return { places, count: known.size };
}

export function dot(one: ArrayLike<number>, other: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < one.length; i += 1) sum += (one[i] ?? 0) * (other[i] ?? 0);
  return sum;
}

/** Inverse of a small symmetric positive matrix, by Gauss and Jordan; the diagonal needs no pivoting. */
function invertMatrix(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < size; k += 1) {
    const pivotRow = work[k] ?? [];
    const pivot = pivotRow[k] ?? 1;
    for (let j = 0; j < 2 * size; j += 1) pivotRow[j] = (pivotRow[j] ?? 0) / pivot;
    for (const [i, row] of work.entries()) {
      if (i === k) continue;
      const factor = row[k] ?? 0;
      for (let j = 0; j < 2 * size; j += 1) row[j] = (row[j] ?? 0) - factor * (pivotRow[j] ?? 0);
    }
  }
  return work.map((row) => row.slice(size));
}
