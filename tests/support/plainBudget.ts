import type { ColumnGas } from './column/columnGas.ts';
import { THIN_RIM } from './column/independentColumn.ts';
import { levineSchwinger } from './column/openEnd.ts';
import { phaseSpeedMps } from './column/tubeWave.ts';

/*
 * Generalised least squares with the covariance written out in full, and each source's share by the law of propagation
 * (JCGM 100:2008, 5.2.2): no identity that saves work, no code of the solver's, the physics of `column`.
 */

/** A length with its order. */
export interface PlainMark {
  readonly frequencyHz: number;
  readonly ends: 'closed' | 'open';
  readonly order: number;
  readonly lengthM: number;
}

/** Standard uncertainties, and what is known of the tube. */
export interface PlainKnowledge {
  readonly gas: ColumnGas;
  /** null: unknown; then walls stay in the speed, and e is in metres. */
  readonly radiusM: number | null;
  readonly readingM: number;
  /** Relative, one error for each fork. */
  readonly fork: number;
  readonly zeroM: number;
  readonly scale: number;
  /** Part of the walls' slowing, that of a tube of 30 mm where the radius is unknown. */
  readonly wall: number;
  /** e over radius, or e in metres, beforehand; null: nothing. */
  readonly end: readonly [value: number, standardUncertainty: number] | null;
}

export interface PlainBudget {
  readonly speedMps: number;
  readonly end: number;
  readonly contributionsMps: Readonly<Record<'reading' | 'fork' | 'zero' | 'scale' | 'wall' | 'end', number>>;
  readonly standardUncertaintyMps: number;
  /** r(v, e). */
  readonly correlation: number;
}

export function plainBudget(marks: readonly PlainMark[], known: PlainKnowledge): PlainBudget {
  const { gas, radiusM, end } = known;
  const openEnd = levineSchwinger();
  const rows = marks.map(({ frequencyHz, ends, order }) => {
    const slowing = 1 - phaseSpeedMps(gas, radiusM ?? 0.015, frequencyHz) / gas.speedMps;
    const ka = (2 * Math.PI * frequencyHz * (radiusM ?? 0)) / gas.speedMps;
    const oneEnd = radiusM === null ? 1 : (radiusM * openEnd(ka).ratio) / THIN_RIM;
    const halves = ends === 'closed' ? order - 0.5 : order;
    return {
      perSpeedS: (halves * (radiusM === null ? 1 : 1 - slowing)) / (2 * frequencyHz),
      slowing,
      endShape: ends === 'closed' ? oneEnd : 2 * oneEnd,
    };
  });
  const columnsM = rows.map(({ perSpeedS }) => perSpeedS * gas.speedMps);
  const design = [...rows.map(({ perSpeedS, endShape }) => [perSpeedS, -endShape]), ...(end ? [[0, 1]] : [])];
  const y = [...marks.map(({ lengthM }) => lengthM), ...(end ? [end[0]] : [])];
  /** Covariance of one source over all values, the constraint last. */
  const covariance = (of: (i: number, j: number) => number, ofEnd = 0): number[][] =>
    y.map((_, i) =>
      y.map((__, j) => (i < marks.length && j < marks.length ? of(i, j) : i === j ? ofEnd : 0)),
    );
  const shared = (errors: readonly number[]) => covariance((i, j) => errors[i] * errors[j]);
  const bySource = {
    reading: covariance((i, j) => (i === j ? known.readingM ** 2 : 0)),
    fork: covariance((i, j) =>
      marks[i].frequencyHz === marks[j].frequencyHz ? columnsM[i] * columnsM[j] * known.fork ** 2 : 0,
    ),
    zero: shared(rows.map(() => known.zeroM)),
    scale: shared(marks.map(({ lengthM }) => lengthM * known.scale)),
    wall: shared(rows.map(({ slowing }, i) => columnsM[i] * slowing * known.wall)),
    end: covariance(() => 0, end === null ? 0 : end[1] ** 2),
  };
  const whole = y.map((_, i) =>
    y.map((__, j) => Object.values(bySource).reduce((sum, matrix) => sum + matrix[i][j], 0)),
  );
  const inverse = inverted(whole);
  const weighted = times(transposed(design), inverse);
  const parameters = inverted(times(weighted, design));
  const weights = times(parameters, weighted);
  const shareOf = (matrix: number[][]): number =>
    Math.sqrt(times(times([weights[0]], matrix), transposed([weights[0]]))[0][0]);
  return {
    speedMps: weights[0].reduce((sum, weight, i) => sum + weight * y[i], 0),
    end: weights[1].reduce((sum, weight, i) => sum + weight * y[i], 0),
    contributionsMps: {
      reading: shareOf(bySource.reading),
      fork: shareOf(bySource.fork),
      zero: shareOf(bySource.zero),
      scale: shareOf(bySource.scale),
      wall: shareOf(bySource.wall),
      end: shareOf(bySource.end),
    },
    standardUncertaintyMps: Math.sqrt(parameters[0][0]),
    correlation: parameters[0][1] / Math.sqrt(parameters[0][0] * parameters[1][1]),
  };
}

function transposed(matrix: readonly (readonly number[])[]): number[][] {
  return matrix[0].map((_, j) => matrix.map((row) => row[j]));
}

function times(one: readonly (readonly number[])[], other: readonly (readonly number[])[]): number[][] {
  return one.map((row) =>
    other[0].map((_, j) => row.reduce((sum, value, k) => sum + value * other[k][j], 0)),
  );
}

/** By Gauss and Jordan with the largest pivot. */
function inverted(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < size; k += 1) {
    let best = k;
    for (let i = k + 1; i < size; i += 1) if (Math.abs(work[i][k]) > Math.abs(work[best][k])) best = i;
    [work[k], work[best]] = [work[best], work[k]];
    const pivot = work[k].map((value) => value / work[k][k]);
    work[k] = pivot;
    for (let i = 0; i < size; i += 1) {
      if (i === k) continue;
      const factor = work[i][k];
      work[i] = work[i].map((value, j) => value - factor * pivot[j]);
    }
  }
  return work.map((row) => row.slice(size));
}
