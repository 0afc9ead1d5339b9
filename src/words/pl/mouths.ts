import type { FirstWords, LaterWords } from '../catalogue.ts';

export const mouthNames: FirstWords['mouthNames'] = {
  'thin-rim': 'cienki brzeg',
  'thick-rim': 'gruby brzeg',
  flange: 'kołnierz',
  obstructed: 'coś blisko wylotu',
  ideal: 'idealny',
};

export const mouthFacts: LaterWords['mouthFacts'] = {
  notDescribed: 'wylot nieopisany',
  ideal: 'bez poprawki na końcu rury, jak w zadaniach',
  mouth: (name) => `wylot: ${name}`,
};
