import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} Resonanz, Gabel mit ${hertz}\u00a0Hz, geschlossene Säule`,
    open: (order, hertz) => `${ordinal(order)} Resonanz, Gabel mit ${hertz}\u00a0Hz, offene Säule`,
  },
  near: (resonance, cm) => `${resonance}, bei etwa ${cm}\u00a0cm`,
  again: (resonance) => `${resonance} (noch einmal ablesen)`,
  gain: (percent) => `Unsicherheit: ${percent}\u00a0% kleiner.`,
  left: (mps) => `Standardunsicherheit dann: ${mps}\u00a0m/s.`,
  hint: (resonance, percent) =>
    `Am besten als Nächstes: ${resonance}. Das würde die Unsicherheit um ${percent}\u00a0% verkleinern.`,
};
