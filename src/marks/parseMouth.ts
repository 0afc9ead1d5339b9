import { MOUTH_SHAPES } from '../air/mouth.ts';
import type { MouthShape } from '../air/mouth.ts';
import { shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

/** What the open end looks like. An empty cell says nothing; a word that means no mouth is a fault. */
export function parseMouth(text: string): Parsed<{ readonly mouth: MouthShape | null }> {
  const word = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-');
  if (word === '') return { ok: true, mouth: null };
  const mouth = MOUTH_SHAPES.find((shape) => shape === word);
  if (mouth !== undefined) return { ok: true, mouth };
  return { ok: false, fault: { code: 'no-mouth', typed: shorten(text), known: MOUTH_SHAPES } };
}
