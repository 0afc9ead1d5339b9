import type { FirstWords } from '../catalogue.ts';

export const placeName: FirstWords['placeName'] = {
  usual: 'Laboratorio',
  practice: 'Columna de práctica',
};
