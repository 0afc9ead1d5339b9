import { dot, invertCovariance } from './errorModel.ts';
import type { ErrorModel } from './errorModel.ts';

/** A linear fit y ≈ Σ parameter·column by generalised least squares. */
export interface LinearFit {
  readonly parameters: readonly number[];
  /** From the stated errors alone. */
  readonly covariance: readonly (readonly number[])[];
  /** parameter = Σ weights·y, one row a parameter. */
  readonly weights: readonly (readonly number[])[];
  readonly residuals: readonly number[];
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  /**
   * For each value the shift that it alone seems to have, over that shift's standard uncertainty; null where the fit
   * passes through it whatever it is.
   */
  readonly shifts: readonly (number | null)[];
}

/**
 * Fits by orthogonalising the columns in the metric of the inverse covariance, which keeps the digits that normal
 * equations lose.
 * @param columns  p columns of n values, p >= 1
 * @param y  n values, n >= p
 * @returns the fit, or null where the columns don't determine every parameter
 * @see Aitken 1936, Proc. R. Soc. Edinb. 55, 42; Björck 1996, Numerical Methods for Least Squares Problems, 2.4
 */
export function fitLinear(
  columns: readonly (readonly number[])[],
  y: readonly number[],
  errors: ErrorModel,
): LinearFit | null {
  const count = columns.length;
  if (count === 0 || y.length < count) return null;
  const inverse = invertCovariance(errors);
  const basis: Float64Array[] = [];
  const weighted: Float64Array[] = [];
  const upper: number[][] = columns.map(() => columns.map(() => 0));

  for (const [j, column] of columns.entries()) {
    const rest = Float64Array.from(column);
    const before = Math.sqrt(dot(rest, inverse.times(rest)));
    // Twice is enough to be orthogonal to the last digit.
    for (let pass = 0; pass < 2; pass += 1) {
      for (let i = 0; i < j; i += 1) {
        const along = dot(weighted[i] ?? [], rest);
        takeAway(rest, along, basis[i]);
        setEntry(upper, i, j, (upper[i]?.[j] ?? 0) + along);
      }
    }
    const size = Math.sqrt(dot(rest, inverse.times(rest)));
    if (!(size > 1e-10 * before)) return null;
    setEntry(upper, j, j, size);
    const unit = rest.map((value) => value / size);
    basis.push(unit);
    weighted.push(inverse.times(unit));
  }

  const residuals = Float64Array.from(y);
  const projections = columns.map(() => 0);
  for (let pass = 0; pass < 2; pass += 1) {
    for (const [i, unit] of basis.entries()) {
      const along = dot(weighted[i] ?? [], residuals);
      projections[i] = (projections[i] ?? 0) + along;
      takeAway(residuals, along, unit);
    }
  }

  // Inverse of the triangle, column by column: parameters = R⁻¹·projections.
  const inverseUpper = columns.map(() => columns.map(() => 0));
  for (let j = 0; j < count; j += 1) {
    for (let i = j; i >= 0; i -= 1) {
      let sum = i === j ? 1 : 0;
      for (let k = i + 1; k <= j; k += 1) sum -= (upper[i]?.[k] ?? 0) * (inverseUpper[k]?.[j] ?? 0);
      setEntry(inverseUpper, i, j, sum / (upper[i]?.[i] ?? 1));
    }
  }
  const pulled = inverse.times(residuals);
  return {
    parameters: inverseUpper.map((row) => dot(row, projections)),
    covariance: inverseUpper.map((row) => inverseUpper.map((other) => dot(row, other))),
    weights: inverseUpper.map((row) =>
      y.map((_, i) => row.reduce((sum, r, k) => sum + r * (weighted[k]?.[i] ?? 0), 0)),
    ),
    residuals: [...residuals],
    chiSquared: Math.max(dot(residuals, pulled), 0),
    degreesOfFreedom: y.length - count,
    shifts: Array.from(pulled, (pull, i) => {
      const whole = inverse.diagonal[i] ?? 0;
      let held = 0;
      for (const column of weighted) held += (column[i] ?? 0) ** 2;
      const free = whole - held;
      return free > 1e-6 * whole ? pull / Math.sqrt(free) : null;
    }),
  };
}

/** values −= factor·unit. */
function takeAway(values: Float64Array, factor: number, unit: Float64Array | undefined): void {
  for (let i = 0; i < values.length; i += 1) values[i] = (values[i] ?? 0) - factor * (unit?.[i] ?? 0);
}

function setEntry(matrix: number[][], row: number, column: number, value: number): void {
  const line = matrix[row];
  if (line !== undefined) line[column] = value;
}
