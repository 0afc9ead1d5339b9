import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const found: FirstWords['found'] = {
  missing: 'nic',
  list: (length) => `lista: ${counted(length, 'element', 'elementy', 'elementów')}`,
  object: 'obiekt',
  other: (type) => `wartość typu ${type}`,
};
