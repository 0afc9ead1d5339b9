/** A point of a line whose both coordinates are uncertain, independently. */
export interface UncertainPoint {
  readonly x: number;
  readonly xStandardUncertainty: number;
  readonly y: number;
  readonly yStandardUncertainty: number;
}

export interface YorkLine {
  readonly slope: number;
  readonly intercept: number;
  readonly slopeStandardUncertainty: number;
  readonly interceptStandardUncertainty: number;
  readonly covariance: number;
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
}

/**
 * Straight line through points that are uncertain in x and y.
 * @param points  at least 2, with y uncertainties above 0 and not all at one x
 * @returns null where the points determine no line
 * @see York, Evensen, López Martínez & De Basabe Delgado 2004, Am. J. Phys. 72, 367, eqs. 13
 * @example
 * const uncertain = { xStandardUncertainty: 0.1, yStandardUncertainty: 0.1 };
 * const points = [1, 2, 3].map((x) => ({ ...uncertain, x, y: 2 * x + 1 }));
 * fitYork(points)?.slope.toFixed(9) // → '2.000000000'
 */
export function fitYork(points: readonly UncertainPoint[]): YorkLine | null {
  const slopeOfMeans = plainSlope(points);
  if (points.length < 2 || slopeOfMeans === null) return null;
  let slope = slopeOfMeans;
  let state = weigh(points, slope);
  for (let round = 0; round < 200; round += 1) {
    const before = slope;
    let top = 0;
    let bottom = 0;
    for (const { x, y, weight, beta } of state.weighed) {
      top += weight * beta * (y - state.meanY);
      bottom += weight * beta * (x - state.meanX);
    }
    if (!(Math.abs(bottom) > 0)) return null;
    slope = top / bottom;
    if (!Number.isFinite(slope)) return null;
    state = weigh(points, slope);
    if (Math.abs(slope - before) <= 1e-14 * Math.abs(slope)) break;
  }
  const { weighed, meanX, meanY, total } = state;
  const intercept = meanY - slope * meanX;
  const adjusted = weighed.map(({ weight, beta }) => ({ weight, x: meanX + beta }));
  const centre = adjusted.reduce((sum, { weight, x }) => sum + weight * x, 0) / total;
  const spread = adjusted.reduce((sum, { weight, x }) => sum + weight * (x - centre) ** 2, 0);
  const slopeVariance = 1 / spread;
  return {
    slope,
    intercept,
    slopeStandardUncertainty: Math.sqrt(slopeVariance),
    interceptStandardUncertainty: Math.sqrt(1 / total + centre * centre * slopeVariance),
    covariance: -centre * slopeVariance,
    chiSquared: weighed.reduce((sum, { x, y, weight }) => sum + weight * (y - slope * x - intercept) ** 2, 0),
    degreesOfFreedom: points.length - 2,
  };
}

function plainSlope(points: readonly UncertainPoint[]): number | null {
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const spread = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  const product = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0);
  return spread > 0 ? product / spread : null;
}

/** Weights and lever arms of the points for a trial slope; York's W and β with independent errors. */
function weigh(points: readonly UncertainPoint[], slope: number) {
  const weights = points.map((point) => {
    const { xStandardUncertainty: ux, yStandardUncertainty: uy } = point;
    return { point, weight: 1 / (uy * uy + slope * slope * ux * ux) };
  });
  const total = weights.reduce((sum, { weight }) => sum + weight, 0);
  const meanX = weights.reduce((sum, { point, weight }) => sum + weight * point.x, 0) / total;
  const meanY = weights.reduce((sum, { point, weight }) => sum + weight * point.y, 0) / total;
  const weighed = weights.map(({ point, weight }) => {
    const { x, y, xStandardUncertainty: ux, yStandardUncertainty: uy } = point;
    return { x, y, weight, beta: weight * ((x - meanX) * uy * uy + slope * (y - meanY) * ux * ux) };
  });
  return { weighed, total, meanX, meanY };
}
