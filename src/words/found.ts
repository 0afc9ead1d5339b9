import { words } from './inUse.ts';

/** More of a text than this helps nobody to find it. */
const LONGEST = 58;

/**
 * What stands in a record where something else belongs, for a message. Looks at nothing inside: a stored or hostile
 * record may be a tower of lists, lead in a circle or hold what JSON has no form for.
 */
export function foundWords(found: unknown): string {
  if (found === undefined) return words.found.missing;
  if (Array.isArray(found)) return words.found.list(found.length);
  if (typeof found === 'object' && found !== null) return words.found.object;
  if (typeof found === 'string') {
    return JSON.stringify(found.length > LONGEST ? `${found.slice(0, LONGEST)}…` : found);
  }
  if (typeof found === 'number' || typeof found === 'boolean' || typeof found === 'bigint')
    return String(found);
  return found === null ? 'null' : words.found.other(typeof found);
}
