import type { FirstWords } from '../catalogue.ts';

export const placeName: FirstWords['placeName'] = {
  usual: 'Labo',
  practice: 'Colonne d’entraînement',
};
