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
    for (const [i, point] of points.entries()) {
      const weight = state.weights[i] ?? 0;
      const beta = state.betas[i] ?? 0;
      top += weight * beta * (point.y - state.meanY);
      bottom += weight * beta * (point.x - state.meanX);
    }
    if (!(Math.abs(bottom) > 0)) return null;
    slope = top / bottom;
    if (!Number.isFinite(slope)) return null;
    state = weigh(points, slope);
    if (Math.abs(slope - before) <= 1e-14 * Math.abs(slope)) break;
  }
  const { weights, betas, meanX, meanY, total } = state;
  const intercept = meanY - slope * meanX;
  const adjusted = betas.map((beta) => meanX + beta);
  const centre = adjusted.reduce((sum, x, i) => sum + (weights[i] ?? 0) * x, 0) / total;
  const spread = adjusted.reduce((sum, x, i) => sum + (weights[i] ?? 0) * (x - centre) ** 2, 0);
  const slopeVariance = 1 / spread;
  return {
    slope,
    intercept,
    slopeStandardUncertainty: Math.sqrt(slopeVariance),
    interceptStandardUncertainty: Math.sqrt(1 / total + centre * centre * slopeVariance),
    covariance: -centre * slopeVariance,
    chiSquared: points.reduce(
      (sum, { x, y }, i) => sum + (weights[i] ?? 0) * (y - slope * x - intercept) ** 2,
      0,
    ),
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
  const weights = points.map(
    ({ xStandardUncertainty: ux, yStandardUncertainty: uy }) => 1 / (uy * uy + slope * slope * ux * ux),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const meanX = points.reduce((sum, { x }, i) => sum + (weights[i] ?? 0) * x, 0) / total;
  const meanY = points.reduce((sum, { y }, i) => sum + (weights[i] ?? 0) * y, 0) / total;
  const betas = points.map(({ x, y, xStandardUncertainty: ux, yStandardUncertainty: uy }, i) => {
    const weight = weights[i] ?? 0;
    return weight * ((x - meanX) * uy * uy + slope * (y - meanY) * ux * ux);
  });
  return { weights, betas, total, meanX, meanY };
}
