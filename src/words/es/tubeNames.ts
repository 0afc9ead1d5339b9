import type { LaterWords } from '../catalogue.ts';

export const tubeName: LaterWords['tubeName'] = {
  atPlace: (experiment, place) => `${experiment}, ${place}`,
  numbered: (name, number) => `${name} ${number}`,
};
