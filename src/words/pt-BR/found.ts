import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const found: FirstWords['found'] = {
  missing: 'nada',
  list: (length) => `uma lista de ${counted(length, 'item', 'itens')}`,
  object: 'um objeto',
  other: (type) => `um valor do tipo ${type}`,
};
