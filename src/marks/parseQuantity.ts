import { isWithin } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';

/** A unit that may be typed: SI value = typed × scale + shift. */
export interface TypedUnit {
  /** As messages write it. */
  readonly symbol: string;
  readonly scale: number;
  readonly shift?: number;
}

/** One kind of quantity as people type it. */
export interface TypedKind {
  readonly name: string;
  /** In SI. */
  readonly limit: Limit;
  /** By what is typed behind the number, in small letters without blanks and degree signs; '' for a plain number. */
  readonly units: Readonly<Record<string, TypedUnit>>;
  /** The units to choose from, for messages: “cm, mm or m”. */
  readonly known: string;
  /** What a plain number outside of the limit was likely meant as, as a sentence; null: no idea. */
  readonly hint?: (value: number) => string | null;
}

/** A typed quantity that was understood. */
export interface TypedQuantity {
  readonly si: number;
  /** The number and the unit as they were typed. */
  readonly value: number;
  readonly unit: string;
}

/**
 * Reads a quantity within its limits. A refusal names the quantity, its range and the value in the unit that was typed,
 * and what to do.
 */
export function parseQuantity(text: string, kind: TypedKind): Parsed<TypedQuantity> {
  const { name, limit, known } = kind;
  const parsed = parseDecimal(text, name);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const unit = parsed.unit.toLowerCase().replace(/[°º\s]|deg(rees)?/g, '');
  const typed = Object.hasOwn(kind.units, unit) ? kind.units[unit] : undefined;
  if (typed === undefined) {
    return { ok: false, message: `“${shorten(parsed.unit)}” is no unit for the ${name}. Use ${known}.` };
  }
  const { scale, shift = 0, symbol } = typed;
  const si = tidy(value * scale + shift);
  if (isWithin(limit, si)) return { ok: true, si, value, unit };
  const [lowest, highest] = [limit.lowest, limit.highest].map((end) => tidy((end - shift) / scale));
  const hint = (unit === '' ? kind.hint?.(value) : null) ?? `Check the number and its unit (${known}).`;
  const message = `The ${name} must be ${lowest}..${highest} ${symbol}, got ${tidy(value)} ${symbol}. ${hint}`;
  return { ok: false, message };
}

/** Drops the noise of a change of units. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
