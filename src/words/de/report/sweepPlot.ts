import type { LaterWords } from '../../catalogue.ts';

export const sweepPlot: LaterWords['sweepPlot'] = {
  title: 'Pegel über der Frequenz des Tons',
  x: 'Frequenz des gespielten Tons, Hz',
  y: 'Pegel, dB (0\u00a0dB: ein Sinus mit Amplitude 1)',
  none: 'Keine Resonanz war sowohl auf dem Weg nach oben als auch auf dem nach unten zu hören.',
  frequency: (hertz) => `${hertz}\u00a0Hz`,
  resonances: (list) =>
    `Resonanzen, die auf dem Weg nach oben (durchgezogen) und auf dem nach unten (gestrichelt) zu hören waren: ${list}.`,
};
