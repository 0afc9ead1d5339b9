import type { LaterWords } from '../../catalogue.ts';

export const listOfSome: LaterWords['listOfSome'] = (entries, more) => `${entries}; y ${more} más`;
