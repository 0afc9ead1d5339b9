import type { LaterWords } from '../../catalogue.ts';

export const sweepPlot: LaterWords['sweepPlot'] = {
  title: 'Nível em função da frequência do tom',
  x: 'frequência do tom tocado, Hz',
  y: 'nível, dB (0\u00a0dB: um seno de amplitude 1)',
  none: 'Nenhuma ressonância foi ouvida tanto na subida como na descida.',
  frequency: (hertz) => `${hertz}\u00a0Hz`,
  resonances: (list) =>
    `Ressonâncias ouvidas tanto na subida (linha cheia) como na descida (tracejada): ${list}.`,
};
