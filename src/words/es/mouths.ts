import type { FirstWords, LaterWords } from '../catalogue.ts';

export const mouthNames: FirstWords['mouthNames'] = {
  'thin-rim': 'borde fino',
  'thick-rim': 'borde grueso',
  flange: 'brida',
  obstructed: 'algo cerca de la boca',
  ideal: 'ideal',
};

export const mouthFacts: LaterWords['mouthFacts'] = {
  notDescribed: 'boca sin describir',
  ideal: 'sin corrección de extremo, como en los ejercicios',
  mouth: (name) => `boca: ${name}`,
};
