import { laterWords } from '../inUse.ts';
import { fixed, signed } from '../numbers.ts';
import { listOfSome } from './listOfSome.ts';

/** A mark's length and what the fit leaves of it, m. */
export interface SpokenResidual {
  readonly lengthM: number;
  readonly residualM: number;
}

/** A mark's order and fork, beside its point. */
export function fitLabel(order: number, frequencyHz: number): string {
  return laterWords.fitPlot.label(order, fixed(frequencyHz, 0));
}

/** What the plot of the fit shows. */
export function fitPlotWords(marks: number, endCorrectionM: number): string {
  return laterWords.fitPlot.shows(marks, fixed(1000 * endCorrectionM, 1));
}

/** What the plot of residuals shows. */
export function residualPlotWords(residuals: readonly SpokenResidual[], hasOutliers: boolean): string {
  const said = laterWords.residualPlot;
  const list = listOfSome(
    residuals.map(({ lengthM, residualM }) =>
      said.residual(fixed(100 * lengthM, 1), signed(1000 * residualM, 1)),
    ),
  );
  return hasOutliers ? `${said.residuals(list)} ${said.noOutliers}` : said.residuals(list);
}
