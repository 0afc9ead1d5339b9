import { FILLINGS } from '../air/gases.ts';
import type { Filling } from '../air/gases.ts';
import { shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

/** What is in the tube. An empty cell says nothing; a word that means no known gas is a fault. */
export function parseFilling(text: string): Parsed<{ readonly filling: Filling | null }> {
  const word = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-');
  if (word === '') return { ok: true, filling: null };
  const filling = FILLINGS.find((one) => one === word);
  if (filling !== undefined) return { ok: true, filling };
  return { ok: false, fault: { code: 'no-gas', typed: shorten(text), known: FILLINGS } };
}
