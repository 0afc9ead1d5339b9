import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} ressonância, diapasão de ${hertz} Hz, coluna fechada`,
    open: (order, hertz) => `${ordinal(order)} ressonância, diapasão de ${hertz} Hz, coluna aberta`,
  },
  near: (resonance, cm) => `${resonance}, perto de ${cm} cm`,
  again: (resonance) => `${resonance} (ler de novo)`,
  gain: (percent) => `Incerteza: ${percent} % menor.`,
  left: (mps) => `Incerteza-padrão depois: ${mps} m/s.`,
  hint: (resonance, percent) =>
    `O melhor a medir agora: ${resonance}. Isso reduziria a incerteza em ${percent} %.`,
};
