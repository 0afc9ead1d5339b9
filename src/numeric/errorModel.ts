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
  times(values: readonly number[]): number[];
  readonly diagonal: readonly number[];
}

/** Values that are independent, with these variances. */
export function independentErrors(variances: readonly number[]): ErrorModel {
  const zeros = variances.map(() => 0);
  return { variances, groups: zeros, groupErrors: zeros, commonErrors: [] };
}

/**
 * Inverse of the errors' covariance by the Sherman–Morrison–Woodbury identity: work and memory grow with n, not n³.
 * @see Golub & Van Loan 2013, Matrix Computations, 2.1.4
 */
export function invertCovariance(model: ErrorModel): InverseCovariance {
  const { variances, groups, groupErrors, commonErrors } = model;
  const weights = variances.map((variance) => 1 / variance);
  const shared = new Map<number, number>();
  for (const [i, group] of groups.entries()) {
    const q = groupErrors[i] ?? 0;
    shared.set(group, (shared.get(group) ?? 0) + q * q * (weights[i] ?? 0));
  }

  const groupedTimes = (values: readonly number[]): number[] => {
    const sums = new Map<number, number>();
    for (const [i, group] of groups.entries()) {
      sums.set(group, (sums.get(group) ?? 0) + (groupErrors[i] ?? 0) * (weights[i] ?? 0) * (values[i] ?? 0));
    }
    return values.map((value, i) => {
      const group = groups[i] ?? 0;
      const pull = (sums.get(group) ?? 0) / (1 + (shared.get(group) ?? 0));
      return (weights[i] ?? 0) * (value - (groupErrors[i] ?? 0) * pull);
    });
  };

  const solved = commonErrors.map(groupedTimes);
  const core = invertMatrix(
    commonErrors.map((one, j) => solved.map((other, k) => (j === k ? 1 : 0) + dot(one, other))),
  );
  return {
    times(values) {
      const grouped = groupedTimes(values);
      const projections = solved.map((column) => dot(column, values));
      const pulls = core.map((row) => dot(row, projections));
      return grouped.map(
        (value, i) => value - solved.reduce((sum, column, j) => sum + (column[i] ?? 0) * (pulls[j] ?? 0), 0),
      );
    },
    diagonal: weights.map((weight, i) => {
      const q = (groupErrors[i] ?? 0) * weight;
      const own = weight - (q * q) / (1 + (shared.get(groups[i] ?? 0) ?? 0));
      const row = solved.map((column) => column[i] ?? 0);
      return (
        own -
        dot(
          row,
          core.map((line) => dot(line, row)),
        )
      );
    }),
  };
}

export function dot(one: readonly number[], other: readonly number[]): number {
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
