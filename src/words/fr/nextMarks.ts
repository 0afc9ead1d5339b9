import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} résonance, diapason de ${hertz}\u00a0Hz, colonne fermée`,
    open: (order, hertz) => `${ordinal(order)} résonance, diapason de ${hertz}\u00a0Hz, colonne ouverte`,
  },
  near: (resonance, cm) => `${resonance}, vers ${cm}\u00a0cm`,
  again: (resonance) => `${resonance} (à relire)`,
  gain: (percent) => `Incertitude\u00a0: ${percent}\u00a0% de moins.`,
  left: (mps) => `Incertitude-type après\u00a0: ${mps}\u00a0m/s.`,
  hint: (resonance, percent) =>
    `Le plus utile ensuite\u00a0: ${resonance}. L’incertitude baisserait de ${percent}\u00a0%.`,
};
