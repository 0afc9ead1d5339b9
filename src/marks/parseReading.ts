import type { Parsed } from './parseDecimal.ts';
import { parseLength } from './parseLength.ts';

/** What was read off the rule: one length, or the two that a resonance lies between. */
export interface Reading {
  readonly lengthM: number;
  /** The longer of a bracket's two lengths; null where one length was read. */
  readonly otherLengthM: number | null;
}

/** Dash, dots or “to” between two numbers; a minus sign has nothing before it. */
const BRACKET = /^(.*[\d.,a-z])\s*(?:[–—−-]|\.\.\.?|…|\bto\b)\s*(\S.*)$/i;
const ENDS_WITH_UNIT = /[a-z]$/i;
const UNIT = /[a-z]+\s*$/i;
/** A wider bracket holds no single resonance of a fork on this bench; the numbers are a slip. A judgement. */
const WIDEST_M = 0.15;

/**
 * Reads a length, or a bracket around a resonance: “15.2–16.4”, “15,2 - 16,4 cm”, “152 to 164 mm”. A unit at the end
 * counts for both.
 * @returns metres, the shorter length first, or what is wrong
 */
export function parseReading(text: string): Parsed<Reading> {
  const match = BRACKET.exec(text.trim());
  const [, first, second] = match ?? [];
  if (first === undefined || second === undefined || /e[+-]?$/i.test(first)) {
    const parsed = parseLength(text);
    return parsed.ok ? { ok: true, lengthM: parsed.lengthM, otherLengthM: null } : parsed;
  }
  const unit = UNIT.exec(second)?.[0] ?? '';
  const to = parseLength(second);
  if (!to.ok) return to;
  const from = parseLength(ENDS_WITH_UNIT.test(first.trim()) ? first : `${first} ${unit}`);
  if (!from.ok) return from;
  const lengthM = Math.min(from.lengthM, to.lengthM);
  const otherLengthM = Math.max(from.lengthM, to.lengthM);
  if (otherLengthM === lengthM) return { ok: true, lengthM, otherLengthM: null };
  if (otherLengthM - lengthM > WIDEST_M) {
    return { ok: false, fault: { code: 'wide-bracket', widestM: WIDEST_M } };
  }
  return { ok: true, lengthM, otherLengthM };
}
