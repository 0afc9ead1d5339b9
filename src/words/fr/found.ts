import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const found: FirstWords['found'] = {
  missing: 'rien',
  list: (length) => `une liste de ${counted(length, 'élément', 'éléments')}`,
  object: 'un objet',
  other: (type) => `une valeur de type ${type}`,
};
