import { shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

/** Yes and true in the languages whose tables come in. An x ticks a box; ✗ may mean either. */
const YES = new Set(
  'y yes true t x 1 ✓ ✔ ja j wahr oui o vrai sí si s verdadero sim verdadeiro tak prawda vero sì da ano igen excluded'.split(
    ' ',
  ),
);
const NO = new Set(
  'n no false f 0 nein falsch non faux não nao falso nie fałsz nee nej nei ne nem - – —'.split(' '),
);

/** Whether a row is left out of the fit. An empty cell says no; a word that means neither is a fault. */
export function parseExcluded(text: string): Parsed<{ readonly excluded: boolean }> {
  const word = text.trim().normalize('NFC').toLowerCase();
  if (word === '' || NO.has(word)) return { ok: true, excluded: false };
  if (YES.has(word)) return { ok: true, excluded: true };
  return { ok: false, fault: { code: 'neither-yes-nor-no', typed: shorten(text) } };
}
