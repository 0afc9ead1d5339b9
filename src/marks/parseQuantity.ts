import { isWithin } from '../limits/limits.ts';
import type { Limit } from '../limits/limits.ts';
import { parseDecimal, shorten } from './parseDecimal.ts';
import type { Parsed } from './parseDecimal.ts';
import type { PlainHint, QuantityName } from './parseFault.ts';

/** A unit that may be typed: SI value = typed × scale + shift. */
export interface TypedUnit {
  /** As it is written. */
  readonly symbol: string;
  readonly scale: number;
  readonly shift?: number;
}

/** Lengths that say their unit. What a plain number is depends on the field. */
export const LENGTH_UNITS = {
  mm: { symbol: 'mm', scale: 0.001 },
  cm: { symbol: 'cm', scale: 0.01 },
  m: { symbol: 'm', scale: 1 },
} as const satisfies Record<string, TypedUnit>;

/** One kind of quantity as people type it. */
export interface TypedKind {
  readonly name: QuantityName;
  /** In SI. */
  readonly limit: Limit;
  /** By what is typed behind the number, in small letters without blanks and degree signs; '' for a plain number. */
  readonly units: Readonly<Record<string, TypedUnit>>;
  /** The units to choose from. */
  readonly known: readonly string[];
  /** What a plain number outside of the limit was likely meant as. */
  readonly hint?: (value: number) => PlainHint;
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
 * and what was likely meant.
 */
export function parseQuantity(text: string, kind: TypedKind): Parsed<TypedQuantity> {
  const { name, limit, known } = kind;
  const parsed = parseDecimal(text, name);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const unit = parsed.unit.toLowerCase().replace(/[°º\s]|deg(rees)?/g, '');
  const typed = Object.hasOwn(kind.units, unit) ? kind.units[unit] : undefined;
  if (typed === undefined) {
    return { ok: false, fault: { code: 'unknown-unit', name, typed: shorten(parsed.unit), known } };
  }
  const { scale, shift = 0, symbol } = typed;
  const si = tidy(value * scale + shift);
  if (isWithin(limit, si)) return { ok: true, si, value, unit };
  const inTyped = (end: number): number => tidy((end - shift) / scale);
  const [lowest, highest] = [inTyped(limit.lowest), inTyped(limit.highest)];
  const hint = (unit === '' ? kind.hint?.(value) : null) ?? null;
  return {
    ok: false,
    fault: { code: 'out-of-range', name, lowest, highest, value, unit: symbol, known, hint },
  };
}

/** Drops the noise of a change of units. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
