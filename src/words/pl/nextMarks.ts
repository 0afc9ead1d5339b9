import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} rezonans, kamerton ${hertz} Hz, słup zamknięty`,
    open: (order, hertz) => `${ordinal(order)} rezonans, kamerton ${hertz} Hz, słup otwarty`,
  },
  near: (resonance, cm) => `${resonance}, blisko ${cm} cm`,
  again: (resonance) => `${resonance} (odczytaj ponownie)`,
  gain: (percent) => `Niepewność: o ${percent} % mniejsza.`,
  left: (mps) => `Niepewność standardowa potem: ${mps} m/s.`,
  hint: (resonance, percent) => `Najlepiej teraz: ${resonance}. Niepewność zmaleje o ${percent} %.`,
};
