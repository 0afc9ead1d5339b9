import { laterWords } from '../inUse.ts';
import { clauses } from '../lists.ts';

/** Entries of a picture's words: nobody reads or hears more. */
const MOST_LISTED = 40;

/** Entries with semicolons between them; of very many the first ones, and how many more there are. */
export function listOfSome(entries: readonly string[]): string {
  const list = clauses(entries.slice(0, MOST_LISTED));
  const more = entries.length - MOST_LISTED;
  return more > 0 ? laterWords.listOfSome(list, more) : list;
}
