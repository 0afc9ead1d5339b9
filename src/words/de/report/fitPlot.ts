import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Länge über der Laufzeit des Schalls',
  x: 'halbe Wellen in der Säule ÷ (2 × Frequenz), ms',
  y: 'Länge, cm',
  label: (order, hertz) => `n = ${order}, ${hertz}\u00a0Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'Marke', 'Marken')}. Die Steigung der Geraden ist die Geschwindigkeit. Sie beginnt um die Mündungskorrektur (${endMm}\u00a0mm) unter null, bei offenen Säulen um das Doppelte.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Abweichungen von der Ausgleichsgeraden',
  x: 'Länge, cm',
  y: 'gemessen − Ausgleichsgerade, mm',
  residual: (cm, mm) => `${cm}\u00a0cm: ${mm}\u00a0mm`,
  residuals: (list) => `Gemessene Länge minus Länge nach der Ausgleichsgeraden: ${list}.`,
  noOutliers: 'Ausreißer sind nicht gezeigt.',
};
