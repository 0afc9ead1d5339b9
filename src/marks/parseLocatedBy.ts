import type { LocatedBy } from './mark.ts';
import { shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

const CENTRE = new Set(['centre', 'center', 'bench', 'phase', 'middle']);
const LOUDEST = new Set(['loudest', 'ear', 'by ear', 'level', 'by level', 'loudness', 'hearing', 'meter']);

/** How a length was found. An empty cell says nothing; a word that means neither way is a fault. */
export function parseLocatedBy(text: string): Parsed<{ readonly locatedBy: LocatedBy | null }> {
  const word = text.trim().toLowerCase();
  if (word === '') return { ok: true, locatedBy: null };
  if (CENTRE.has(word)) return { ok: true, locatedBy: 'centre' };
  if (LOUDEST.has(word)) return { ok: true, locatedBy: 'loudest' };
  return { ok: false, fault: { code: 'no-way-of-locating', typed: shorten(text) } };
}
