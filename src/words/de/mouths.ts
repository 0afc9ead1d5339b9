import type { FirstWords, LaterWords } from '../catalogue.ts';

export const mouthNames: FirstWords['mouthNames'] = {
  'thin-rim': 'dünner Rand',
  'thick-rim': 'dicker Rand',
  flange: 'Flansch',
  obstructed: 'etwas vor der Mündung',
  ideal: 'ideal',
};

export const mouthFacts: LaterWords['mouthFacts'] = {
  notDescribed: 'Mündung nicht beschrieben',
  ideal: 'keine Mündungskorrektur, wie in Übungsaufgaben',
  mouth: (name) => `Mündung: ${name}`,
};
