import type { FirstWords } from '../catalogue.ts';

export const placeName: FirstWords['placeName'] = {
  usual: 'Laboratório',
  practice: 'Coluna de treino',
};
