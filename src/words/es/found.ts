import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const found: FirstWords['found'] = {
  missing: 'nada',
  list: (length) => `una lista de ${counted(length, 'elemento', 'elementos')}`,
  object: 'un objeto',
  other: (type) => `un valor de tipo ${type}`,
};
