/** One row of a logistic regression: terms (the first is 1) and whether it is a hit. */
export interface Row {
  readonly values: readonly number[];
  readonly hit: boolean;
}

/**
 * Weights of a logistic rule by Newton's method, with a ridge on all but the constant, on terms scaled to unit
 * standard deviation.
 * @see McCullagh & Nelder, Generalized Linear Models, ch. 4 (iteratively reweighted least squares)
 */
export function fitLogistic(rows: readonly Row[], ridge: number): number[] {
  const size = rows[0]?.values.length ?? 0;
  const mean = new Array<number>(size).fill(0);
  const scale = new Array<number>(size).fill(1);
  for (let j = 1; j < size; j += 1) {
    let [sum, squares] = [0, 0];
    for (const { values } of rows) {
      sum += values[j] as number;
      squares += (values[j] as number) ** 2;
    }
    mean[j] = sum / rows.length;
    scale[j] = Math.sqrt(squares / rows.length - (mean[j] as number) ** 2) || 1;
  }
  const scaled = rows.map(({ values, hit }) => ({
    z: values.map((v, j) => (j === 0 ? 1 : (v - (mean[j] as number)) / (scale[j] as number))),
    y: hit ? 1 : 0,
  }));
  const weights = new Array<number>(size).fill(0);
  for (let round = 0; round < 50; round += 1) {
    const matrix = Array.from({ length: size }, () => new Array<number>(size + 1).fill(0));
    for (const { z, y } of scaled) {
      let sum = 0;
      for (let j = 0; j < size; j += 1) sum += (weights[j] as number) * (z[j] as number);
      const p = 1 / (1 + Math.exp(-sum));
      const w = p * (1 - p) + 1e-9;
      for (let j = 0; j < size; j += 1) {
        const row = matrix[j] as number[];
        row[size] = (row[size] as number) + (y - p) * (z[j] as number);
        for (let k = 0; k < size; k += 1)
          row[k] = (row[k] as number) + w * (z[j] as number) * (z[k] as number);
      }
    }
    for (let j = 1; j < size; j += 1) {
      const row = matrix[j] as number[];
      row[j] = (row[j] as number) + ridge;
      row[size] = (row[size] as number) - ridge * (weights[j] as number);
    }
    const step = solveLinear(matrix);
    let change = 0;
    step.forEach((s, j) => {
      weights[j] = (weights[j] as number) + s;
      change += Math.abs(s);
    });
    if (change < 1e-7) break;
  }
  const raw = weights.map((w, j) => w / (scale[j] as number));
  raw[0] = (weights[0] as number) - raw.slice(1).reduce((sum, w, j) => sum + w * (mean[j + 1] as number), 0);
  return raw;
}

/** Gauss–Jordan with pivoting on an augmented matrix. */
function solveLinear(matrix: number[][]): number[] {
  const size = matrix.length;
  for (let i = 0; i < size; i += 1) {
    let pivot = i;
    for (let k = i + 1; k < size; k += 1) {
      if (Math.abs(matrix[k]?.[i] ?? 0) > Math.abs(matrix[pivot]?.[i] ?? 0)) pivot = k;
    }
    const top = matrix[pivot] as number[];
    matrix[pivot] = matrix[i] as number[];
    matrix[i] = top;
    for (let k = 0; k < size; k += 1) {
      if (k === i) continue;
      const row = matrix[k] as number[];
      const factor = (row[i] as number) / (top[i] as number);
      for (let m = i; m <= size; m += 1) row[m] = (row[m] as number) - factor * (top[m] as number);
    }
  }
  return matrix.map((row, i) => (row[size] as number) / (row[i] as number));
}
