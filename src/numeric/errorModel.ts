/**
 * Errors of n measured values: each its own, some shared within a group (a fork's frequency), some shared by all (the
 * rule). Their covariance is diag(variances) + Σ over groups q·qᵀ + Σ over common errors q·qᵀ.
 */
export interface ErrorModel {
  /** Each value's own variance, > 0. All lists have one entry a value. */
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

/**
 * Values that are independent, with these variances.
 * @example
 * independentErrors([4, 9]).variances // → [4, 9]
 */
export function independentErrors(variances: readonly number[]): ErrorModel {
  const zeros = variances.map(() => 0);
  return { variances, groups: zeros, groupErrors: zeros, commonErrors: [] };
}

/**
 * Inverse of the errors' covariance by the Sherman–Morrison–Woodbury identity: work and memory grow with n, not n³.
 * @see Golub & Van Loan 2013, Matrix Computations, 2.1.4
 * @example
 * invertCovariance(independentErrors([4, 9])).times([4, 9]) // → [1, 1]
 */
export function invertCovariance(model: ErrorModel): InverseCovariance {
  const { variances, groups, groupErrors, commonErrors } = model;
  const weights = variances.map((variance) => 1 / variance);
  const shared = new Map<number, number>();
  for (const [i, group] of groups.entries()) {
    const q = groupErrors[i];
    shared.set(group, (shared.get(group) ?? 0) + q * q * weights[i]);
  }

  const groupedTimes = (values: readonly number[]): number[] => {
    const sums = new Map<number, number>();
    for (const [i, group] of groups.entries()) {
      sums.set(group, (sums.get(group) ?? 0) + groupErrors[i] * weights[i] * values[i]);
    }
    return values.map((value, i) => {
      const group = groups[i];
      const pull = (sums.get(group) ?? 0) / (1 + (shared.get(group) ?? 0));
      return weights[i] * (value - groupErrors[i] * pull);
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
        (value, i) => value - solved.reduce((sum, column, j) => sum + column[i] * pulls[j], 0),
      );
    },
    diagonal: weights.map((weight, i) => {
      const q = groupErrors[i] * weight;
      const own = weight - (q * q) / (1 + (shared.get(groups[i]) ?? 0));
      const row = solved.map((column) => column[i]);
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

/**
 * Sum of the products of two lists' entries.
 * @param other  as long as the first
 * @example
 * dot([1, 2], [3, 4]) // → 11
 */
export function dot(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < one.length; i += 1) sum += one[i] * other[i];
  return sum;
}

/** Inverse of a small symmetric positive matrix, by Gauss and Jordan; the diagonal needs no pivoting. */
function invertMatrix(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (const [k, pivotRow] of work.entries()) {
    const pivot = pivotRow[k];
    for (let j = 0; j < 2 * size; j += 1) pivotRow[j] = pivotRow[j] / pivot;
    for (const [i, row] of work.entries()) {
      if (i === k) continue;
      const factor = row[k];
      for (let j = 0; j < 2 * size; j += 1) row[j] = row[j] - factor * pivotRow[j];
    }
  }
  return work.map((row) => row.slice(size));
}
