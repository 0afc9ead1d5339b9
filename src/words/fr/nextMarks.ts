import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} résonance, diapason de ${hertz} Hz, colonne fermée`,
    open: (order, hertz) => `${ordinal(order)} résonance, diapason de ${hertz} Hz, colonne ouverte`,
  },
  near: (resonance, cm) => `${resonance}, vers ${cm} cm`,
  again: (resonance) => `${resonance} (à relire)`,
  gain: (percent) => `Incertitude\u00a0: ${percent} % de moins.`,
  left: (mps) => `Incertitude-type ensuite\u00a0: ${mps} m/s.`,
  hint: (resonance, percent) =>
    `Le mieux ensuite\u00a0: ${resonance}. L’incertitude baisserait de ${percent} %.`,
};
