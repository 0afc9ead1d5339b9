import type { LaterWords } from '../../catalogue.ts';

export const sweepPlot: LaterWords['sweepPlot'] = {
  title: 'Nivel frente a la frecuencia del tono',
  x: 'frecuencia del tono reproducido, Hz',
  y: 'nivel, dB (0\u00a0dB: un seno de amplitud 1)',
  none: 'No se oyó ninguna resonancia tanto al subir como al bajar.',
  frequency: (hertz) => `${hertz}\u00a0Hz`,
  resonances: (list) =>
    `Resonancias oídas tanto al subir (línea continua) como al bajar (discontinua): ${list}.`,
};
