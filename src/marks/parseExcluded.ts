import { shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

/** Yes and true in the languages whose tables come in. An x ticks a box; ✗ may mean either. */
const YES = new Set(
  'y yes true t x 1 ✓ ✔ ja j wahr oui o vrai sí si s verdadero sim verdadeiro tak prawda vero excluded'.split(
    ' ',
  ),
);
const NO = new Set('n no false f 0 nein falsch non faux não nao falso nie fałsz'.split(' '));

/** Whether a row is left out of the fit. An empty cell says no; a word that means neither is a fault. */
export function parseExcluded(text: string): Parsed<{ readonly excluded: boolean }> {
  const word = text.trim().normalize('NFC').toLowerCase();
  if (word === '' || NO.has(word)) return { ok: true, excluded: false };
  if (YES.has(word)) return { ok: true, excluded: true };
  return {
    ok: false,
    message: `“${shorten(text)}” is neither yes nor no. Write yes for a mark that is left out of the fit, else leave the cell empty.`,
  };
}
