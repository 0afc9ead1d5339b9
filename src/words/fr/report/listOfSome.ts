import type { LaterWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const listOfSome: LaterWords['listOfSome'] = (entries, more) =>
  `${entries}\u00a0; et ${counted(more, 'autre', 'autres')}`;
