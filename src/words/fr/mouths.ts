import type { FirstWords, LaterWords } from '../catalogue.ts';

export const mouthNames: FirstWords['mouthNames'] = {
  'thin-rim': 'bord mince',
  'thick-rim': 'bord épais',
  flange: 'collerette',
  obstructed: 'objet proche de l’embouchure',
  ideal: 'idéale',
};

export const mouthFacts: LaterWords['mouthFacts'] = {
  notDescribed: 'embouchure non décrite',
  ideal: 'pas de correction d’extrémité, comme dans les exercices',
  mouth: (name) => `embouchure : ${name}`,
};
