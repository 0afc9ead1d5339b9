import { LOW_FREQUENCY_END_RATIO } from '../air/endCorrection.ts';
import { fitYork } from '../numeric/fitYork.ts';
import { coverageFactor } from '../numeric/studentT.ts';

export interface TubeEnd {
  readonly radiusM: number;
  readonly radiusStandardUncertaintyM: number;
  readonly endCorrectionM: number;
  readonly endCorrectionStandardUncertaintyM: number;
}

/** End corrections of several tubes against their radii, as a line. */
export interface EndRatio {
  /** e/a, the line's slope. */
  readonly ratio: number;
  readonly standardUncertainty: number;
  readonly expandedUncertainty: number;
  /** The line's value at no radius: an error of the rule's zero that all tubes share, m. */
  readonly zeroM: number;
  readonly zeroStandardUncertaintyM: number;
  /** Theory's ratio for a thin rim at low frequency. */
  readonly theoryRatio: number;
}

/**
 * Ratio of end correction to radius from tubes of at least two diameters; an error of the rule's zero falls out.
 * @returns null where there are not two different radii
 * @example
 * const uncertain = { radiusStandardUncertaintyM: 1e-4, endCorrectionStandardUncertaintyM: 5e-4 };
 * const tubes = [0.01, 0.02].map((radiusM) => ({ ...uncertain, radiusM, endCorrectionM: 0.61 * radiusM }));
 * endRatio(tubes)?.ratio.toFixed(2) // → '0.61'
 */
export function endRatio(tubes: readonly TubeEnd[]): EndRatio | null {
  const line = fitYork(
    tubes
      .filter(({ endCorrectionStandardUncertaintyM }) => endCorrectionStandardUncertaintyM > 0)
      .map((tube) => ({
        x: tube.radiusM,
        xStandardUncertainty: tube.radiusStandardUncertaintyM,
        y: tube.endCorrectionM,
        yStandardUncertainty: tube.endCorrectionStandardUncertaintyM,
      })),
  );
  if (line === null) return null;
  const { degreesOfFreedom } = line;
  const scatter = degreesOfFreedom > 0 ? Math.max(Math.sqrt(line.chiSquared / degreesOfFreedom), 1) : 1;
  const standardUncertainty = scatter * line.slopeStandardUncertainty;
  return {
    ratio: line.slope,
    standardUncertainty,
    expandedUncertainty: coverageFactor(scatter > 1 ? degreesOfFreedom : 50) * standardUncertainty,
    zeroM: line.intercept,
    zeroStandardUncertaintyM: scatter * line.interceptStandardUncertainty,
    theoryRatio: LOW_FREQUENCY_END_RATIO.unflanged,
  };
}
