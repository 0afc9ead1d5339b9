import type { LaterWords } from '../../catalogue.ts';
import { counted, ordinal } from '../grammar.ts';

export const fitPlot: LaterWords['fitPlot'] = {
  title: 'Longitud frente al tiempo de recorrido del sonido',
  x: 'medias ondas en la columna ÷ (2 × frecuencia), ms',
  y: 'longitud, cm',
  label: (order, hertz) => `${ordinal(order)}, ${hertz}\u00a0Hz`,
  shows: (marks, endMm) =>
    `${counted(marks, 'marca', 'marcas')}. La pendiente de la recta es la velocidad. Empieza por debajo de cero: a la distancia de la corrección de extremo, ${endMm}\u00a0mm, o al doble si la columna es abierta.`,
};

export const residualPlot: LaterWords['residualPlot'] = {
  title: 'Residuos del ajuste',
  x: 'longitud, cm',
  y: 'medida − ajustada, mm',
  residual: (cm, mm) => `${cm}\u00a0cm: ${mm}\u00a0mm`,
  residuals: (list) => `Longitud medida menos ajustada: ${list}.`,
  noOutliers: 'Los valores atípicos no se muestran.',
};
