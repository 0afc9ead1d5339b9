import type { LaterWords } from '../../catalogue.ts';

export const sweepPlot: LaterWords['sweepPlot'] = {
  title: 'Niveau en fonction de la fréquence du son',
  x: 'fréquence du son joué, Hz',
  y: 'niveau, dB (0\u00a0dB : une sinusoïde d’amplitude 1)',
  none: 'Aucune résonance n’a été entendue à la fois à la montée et à la descente.',
  frequency: (hertz) => `${hertz}\u00a0Hz`,
  resonances: (list) =>
    `Résonances entendues à la montée (trait plein) et à la descente (tirets)\u00a0: ${list}.`,
};
