import type { LaterWords } from '../../catalogue.ts';

export const sweepPlot: LaterWords['sweepPlot'] = {
  title: 'Zależność poziomu od częstotliwości tonu',
  x: 'częstotliwość odtwarzanego tonu, Hz',
  y: 'poziom, dB (0\u00a0dB: sinus o amplitudzie 1)',
  none: 'Żadnego rezonansu nie było słychać zarówno w górę, jak i w dół.',
  frequency: (hertz) => `${hertz}\u00a0Hz`,
  resonances: (list) =>
    `Rezonanse, które było słychać i w górę (linia ciągła), i w dół (przerywana): ${list}.`,
};
