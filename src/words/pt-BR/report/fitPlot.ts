import type { LaterWords } from '../../catalogue.ts';
import { counted, ordinal } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Comprimento em função do tempo de percurso do som',
  x: 'meias ondas na coluna ÷ (2 × frequência), ms',
  y: 'comprimento, cm',
  label: (order, hertz) => `${ordinal(order)}, ${hertz}\u00a0Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'marca', 'marcas')}. A inclinação da reta é a velocidade. A reta começa abaixo de zero: na correção de extremidade de ${endMm}\u00a0mm, ou no dobro dela em colunas abertas.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Resíduos do ajuste',
  x: 'comprimento, cm',
  y: 'medido − ajustado, mm',
  residual: (cm, mm) => `${cm}\u00a0cm: ${mm}\u00a0mm`,
  residuals: (list) => `Comprimento medido menos ajustado: ${list}.`,
  noOutliers: 'Valores discrepantes não são mostrados.',
};
