import type { FirstWords, LaterWords } from '../catalogue.ts';

export const mouthNames: FirstWords['mouthNames'] = {
  'thin-rim': 'borda fina',
  'thick-rim': 'borda grossa',
  flange: 'flange',
  obstructed: 'algo perto da boca',
  ideal: 'ideal',
};

export const mouthFacts: LaterWords['mouthFacts'] = {
  notDescribed: 'boca não descrita',
  ideal: 'sem correção de extremidade, como nos exercícios',
  mouth: (name) => `boca: ${name}`,
};
