import { ordinal, plural } from '../grammar.ts';

export const fitPlot = {
  title: 'Length against the time that sound takes along the column',
  x: 'half waves in the column ÷ (2 × frequency), ms',
  y: 'length, cm',
  label: (order: number, hertz: string) => `${ordinal(order)}, ${hertz} Hz`,
  shows: (marks: number, endMm: string) =>
    `${marks} ${plural(marks, 'mark')}. The slope of the line is the speed. It begins below zero: by the end correction of ${endMm} mm, or twice that for open columns.`,
};

export const residualPlot = {
  title: 'What the fit leaves over',
  x: 'length, cm',
  y: 'measured − fitted, mm',
  residual: (cm: string, mm: string) => `${cm} cm: ${mm} mm`,
  residuals: (list: string) => `Measured minus fitted length: ${list}.`,
  noOutliers: 'Outliers are not shown.',
};
