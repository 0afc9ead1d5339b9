import { counted, ordinal } from '../grammar.ts';
import { fixed } from '../../numbers.ts';

export const fitPlot = {
  title: 'Length against the sound’s time along the column',
  x: 'half waves in the column ÷ (2 × pitch), ms',
  y: 'length, cm',
  label: (order: number, frequencyHz: number) => `${ordinal(order)}, ${fixed(frequencyHz, 0)} Hz`,
  shows: (marks: number, endCorrectionM: number) =>
    `${counted(marks, 'mark')}; the slope is the speed, the start below zero is the end correction of ${fixed(endCorrectionM * 1000, 1)} mm.`,
};

export const residualPlot = {
  title: 'What is left after the fit',
  x: 'length, cm',
  y: 'measured − fitted, mm',
  residual: (cm: string, mm: string) => `${cm} cm: ${mm} mm`,
  residuals: (list: string) => `Residuals: ${list}.`,
  noOutliers: 'Outliers are not shown.',
};
