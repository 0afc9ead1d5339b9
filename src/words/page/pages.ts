import type { LaterWords } from '../catalogue.ts';

/** A list that is too long to be shown at once. */
export type PagedList = keyof LaterWords['list'];
