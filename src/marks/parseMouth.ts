import { MOUTH_SHAPES } from '../air/mouth.ts';
import type { MouthShape } from '../air/mouth.ts';
import type { Parsed } from './parseDecimal.ts';
import { parseName } from './parseName.ts';

/** What the open end looks like. An empty cell says nothing; a word that means no mouth is a fault. */
export function parseMouth(text: string): Parsed<{ readonly mouth: MouthShape | null }> {
  const cell = parseName(text, MOUTH_SHAPES);
  if (cell.kind === 'unknown')
    return { ok: false, fault: { code: 'no-mouth', typed: cell.typed, known: MOUTH_SHAPES } };
  return { ok: true, mouth: cell.kind === 'empty' ? null : cell.name };
}
