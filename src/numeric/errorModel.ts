/**
 * Errors of n measured values: each its own, some shared within a group (a fork's frequency), some shared by all (the
 * rule). Their covariance is diag(variances) + Σ over groups q·qᵀ + Σ over common errors q·qᵀ.
 */
export interface ErrorModel {
  /** Each value's own variance, > 0. All lists have one entry a value. */
  readonly variances: readonly number[];
  /** Finest first: values of one group are together in each later partition, too. */
  readonly partitions: readonly Partition[];
  /** For each common error its effect on every value, one standard uncertainty large. */
  readonly commonErrors: readonly (readonly number[])[];
}

/** Values parted into groups, each of which shares an error. */
export interface Partition {
  /** Group of each value, any numbers. */
  readonly groups: readonly number[];
  /** Effect of its group's error on each value, one standard uncertainty large. */
  readonly errors: readonly number[];
}

/** The inverse of a covariance, as far as a fit needs it. */
export interface InverseCovariance {
  times(values: ArrayLike<number>): Float64Array;
  readonly diagonal: Float64Array;
}

/**
 * Values that are independent, with these variances.
 * @example
 * independentErrors([4, 9]).variances // → [4, 9]
 */
export function independentErrors(variances: readonly number[]): ErrorModel {
  return { variances, partitions: [], commonErrors: [] };
}

/**
 * Inverse of the errors' covariance by the Sherman–Morrison–Woodbury identity: work and memory grow with n, not n³.
 * Plain loops over typed arrays: a table of thousands of marks is fitted a hundred times while its blunders are found.
 * @see Golub & Van Loan 2013, Matrix Computations, 2.1.4
 * @example
 * [...invertCovariance(independentErrors([4, 9])).times([4, 9])] // → [1, 1]
 */
export function invertCovariance(model: ErrorModel): InverseCovariance {
  const { commonErrors } = model;
  const n = model.variances.length;
  const weights = Float64Array.from(model.variances, (variance) => 1 / variance);
  const levels: Level[] = [];
  const groupedTimes = (values: ArrayLike<number>): Float64Array => {
    const result = Float64Array.from(weights, (weight, i) => weight * values[i]);
    for (const { groups, errors, solved, wholes } of levels) {
      const sums = new Float64Array(wholes.length);
      for (let i = 0; i < n; i += 1) sums[groups[i]] += errors[i] * result[i];
      for (let i = 0; i < n; i += 1) result[i] -= (solved[i] * sums[groups[i]]) / wholes[groups[i]];
    }
    return result;
  };
  // A finer partition's groups lie within one of the next: what is inverted so far never mixes its groups.
  for (const partition of model.partitions) {
    const errors = Float64Array.from(partition.errors);
    const solved = groupedTimes(errors);
    const { groups, count } = numberGroups(partition.groups);
    const wholes = new Float64Array(count).fill(1);
    for (let i = 0; i < n; i += 1) wholes[groups[i]] += errors[i] * solved[i];
    levels.push({ groups, errors, solved, wholes });
  }

  const solved = commonErrors.map(groupedTimes);
  const core = invertMatrix(
    commonErrors.map((one, j) => solved.map((other, k) => (j === k ? 1 : 0) + dot(one, other))),
  );
  /** Row i of the solved columns, times the core's inverse or weights: Σ over j of solved[j][i]·pulls[j]. */
  const across = (i: number, pulls: ArrayLike<number>): number => {
    let sum = 0;
    for (let j = 0; j < solved.length; j += 1) sum += solved[j][i] * pulls[j];
    return sum;
  };
  const diagonal = new Float64Array(n);
  const lines = new Float64Array(core.length);
  for (let i = 0; i < n; i += 1) {
    let own = weights[i];
    for (const level of levels) own -= level.solved[i] ** 2 / level.wholes[level.groups[i]];
    for (let k = 0; k < core.length; k += 1) lines[k] = across(i, core[k]);
    diagonal[i] = own - across(i, lines);
  }
  return {
    diagonal,
    times(values) {
      const result = groupedTimes(values);
      const projections = solved.map((column) => dot(column, values));
      const pulls = core.map((row) => dot(row, projections));
      for (let i = 0; i < n; i += 1) result[i] -= across(i, pulls);
      return result;
    },
  };
}

/** A partition as it is inverted. */
interface Level {
  readonly groups: Int32Array;
  readonly errors: Float64Array;
  /** The finer levels' inverse times the errors. */
  readonly solved: Float64Array;
  /** One and each group's errors times that. */
  readonly wholes: Float64Array;
}

/** Each value's group counted from 0 in the order in which they appear: faster to look up than any number. */
function numberGroups(groups: readonly number[]): { readonly groups: Int32Array; readonly count: number } {
  const known = new Map<number, number>();
  const numbered = Int32Array.from(groups, (group) => {
    const number = known.get(group) ?? known.size;
    known.set(group, number);
    return number;
  });
  return { groups: numbered, count: known.size };
}

/**
 * Sum of the products of two lists' entries.
 * @param other  as long as the first
 * @example
 * dot([1, 2], [3, 4]) // → 11
 */
export function dot(one: ArrayLike<number>, other: ArrayLike<number>): number {
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
