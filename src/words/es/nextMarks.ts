import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} resonancia, diapasón de ${hertz} Hz, columna cerrada`,
    open: (order, hertz) => `${ordinal(order)} resonancia, diapasón de ${hertz} Hz, columna abierta`,
  },
  near: (resonance, cm) => `${resonance}, hacia ${cm} cm`,
  again: (resonance) => `${resonance} (leerla otra vez)`,
  gain: (percent) => `Incertidumbre: un ${percent} % menos.`,
  left: (mps) => `Quedaría una incertidumbre típica de ${mps} m/s.`,
  hint: (resonance, percent) => `Lo mejor ahora: ${resonance}. Reduciría la incertidumbre un ${percent} %.`,
};
