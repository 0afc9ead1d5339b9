import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} resonancia, diapasón de ${hertz}\u00a0Hz, columna cerrada`,
    open: (order, hertz) => `${ordinal(order)} resonancia, diapasón de ${hertz}\u00a0Hz, columna abierta`,
  },
  near: (resonance, cm) => `${resonance}, hacia ${cm}\u00a0cm`,
  again: (resonance) => `${resonance} (leerla otra vez)`,
  gain: (percent) => `Incertidumbre: un ${percent}\u00a0% menos.`,
  left: (mps) => `Quedaría una incertidumbre típica de ${mps}\u00a0m/s.`,
  hint: (resonance, percent) =>
    `Lo mejor ahora: ${resonance}. Reduciría la incertidumbre un ${percent}\u00a0%.`,
};
