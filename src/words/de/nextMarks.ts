import type { FirstWords } from '../catalogue.ts';
import { ordinal } from './grammar.ts';

export const nextMark: FirstWords['nextMark'] = {
  resonance: {
    closed: (order, hertz) => `${ordinal(order)} Resonanz, Gabel mit ${hertz} Hz, geschlossene Säule`,
    open: (order, hertz) => `${ordinal(order)} Resonanz, Gabel mit ${hertz} Hz, offene Säule`,
  },
  near: (resonance, cm) => `${resonance}, bei etwa ${cm} cm`,
  again: (resonance) => `${resonance} (noch einmal ablesen)`,
  gain: (percent) => `Unsicherheit: ${percent} % kleiner.`,
  left: (mps) => `Standardunsicherheit dann: ${mps} m/s.`,
  hint: (resonance, percent) =>
    `Am besten als Nächstes: ${resonance}. Das würde die Unsicherheit um ${percent} % verkleinern.`,
};
