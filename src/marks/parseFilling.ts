import { FILLINGS } from '../air/gases.ts';
import type { Filling } from '../air/gases.ts';
import type { Parsed } from './parseDecimal.ts';
import { parseName } from './parseName.ts';

/** What is in the tube. An empty cell says nothing; a word that means no known gas is a fault. */
export function parseFilling(text: string): Parsed<{ readonly filling: Filling | null }> {
  const cell = parseName(text, FILLINGS);
  if (cell.kind === 'unknown')
    return { ok: false, fault: { code: 'no-gas', typed: cell.typed, known: FILLINGS } };
  return { ok: true, filling: cell.kind === 'empty' ? null : cell.name };
}
