import { counted, fixed, ordinal, signed } from '../numbers.ts';
import { listOfSome } from './listOfSome.ts';

export const fitPlotWords = {
  title: 'Length against the sound’s time along the column',
  x: 'half waves in the column ÷ (2 × pitch), ms',
  y: 'length, cm',
  label: (order: number, frequencyHz: number) => `${ordinal(order)}, ${fixed(frequencyHz, 0)} Hz`,
  shows: (marks: number, endCorrectionM: number) =>
    `${counted(marks, 'mark')}; the slope is the speed, the start below zero is the end correction of ${fixed(endCorrectionM * 1000, 1)} mm.`,
} as const;

/** A mark's length and what the fit leaves of it, m. */
export interface SpokenResidual {
  readonly lengthM: number;
  readonly residualM: number;
}

export const residualPlotWords = {
  title: 'What is left after the fit',
  x: 'length, cm',
  y: 'measured − fitted, mm',
  shows: (residuals: readonly SpokenResidual[], hasOutliers: boolean) => {
    const list = listOfSome(
      residuals.map(
        ({ lengthM, residualM }) => `${fixed(100 * lengthM, 1)} cm: ${signed(1000 * residualM, 1)} mm`,
      ),
    );
    return `Residuals: ${list}.${hasOutliers ? ' Outliers are not shown.' : ''}`;
  },
} as const;
