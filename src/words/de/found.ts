import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const found: FirstWords['found'] = {
  missing: 'nichts',
  list: (length) => `eine Liste mit ${counted(length, 'Eintrag', 'Einträgen')}`,
  object: 'ein Objekt',
  other: (type) => `etwas vom Typ ${type}`,
};
