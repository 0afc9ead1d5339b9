import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} ressonância, diapasão de ${hertz}\u00a0Hz, coluna fechada`,
    open: (order, hertz) => `${ordinal(order)} ressonância, diapasão de ${hertz}\u00a0Hz, coluna aberta`,
  },
  near: (resonance, cm) => `${resonance}, perto de ${cm}\u00a0cm`,
  again: (resonance) => `${resonance} (ler de novo)`,
  gain: (percent) => `Incerteza: ${percent}\u00a0% menor.`,
  left: (mps) => `Incerteza-padrão depois: ${mps}\u00a0m/s.`,
  hint: (resonance, percent) =>
    `O melhor a medir agora: ${resonance}. Isso reduziria a incerteza em ${percent}\u00a0%.`,
};
