import type { LaterWords } from '../../catalogue.ts';
import { counted, ordinal } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Comprimento em função do tempo de percurso do som',
  x: 'meias ondas na coluna ÷ (2 × frequência), ms',
  y: 'comprimento, cm',
  label: (order, hertz) => `${ordinal(order)}, ${hertz} Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'marca', 'marcas')}. A inclinação da reta é a velocidade. A reta começa abaixo de zero: na correção de extremidade de ${endMm} mm, ou no dobro dela em colunas abertas.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Resíduos do ajuste',
  x: 'comprimento, cm',
  y: 'medido − ajustado, mm',
  residual: (cm, mm) => `${cm} cm: ${mm} mm`,
  residuals: (list) => `Comprimento medido menos ajustado: ${list}.`,
  noOutliers: 'Valores discrepantes não são mostrados.',
};
