import type { ParseFault, QuantityName } from './parseFault.ts';

/** A typed value that was understood, or what is wrong with it. */
export type Parsed<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly fault: ParseFault };

/** A number and the unit typed behind it; '' where there was none. */
export interface TypedNumber {
  readonly value: number;
  readonly unit: string;
}

const NUMBER = /^([+-]?)(\d+(?:[.,]\d*)?|[.,]\d+)(e[+-]?\d+)?\s*(.*)$/i;

/**
 * Reads a decimal number as people type it: "15,8" and "15.8" alike, a unit may follow. A comma is always a decimal
 * comma; thousands are not separated.
 * @param text  any text, surrounding blanks allowed
 * @param name  what the number is, for a fault
 */
export function parseDecimal(text: string, name: QuantityName = 'value'): Parsed<TypedNumber> {
  const tidy = text
    .replace(/[\u00a0\u2007\u202f]/g, ' ')
    .replace(/[\u2212\u2013]/g, '-')
    .trim();
  if (tidy === '') return { ok: false, fault: { code: 'empty', name } };
  const match = NUMBER.exec(tidy);
  if (match === null) return { ok: false, fault: { code: 'no-number', name, typed: shorten(tidy) } };
  const [, sign = '', digits = '', exponent = '', unit = ''] = match;
  if (/^[.,\d]/.test(unit)) {
    return { ok: false, fault: { code: 'split-number', name, typed: shorten(tidy) } };
  }
  const value = Number(sign + digits.replace(',', '.') + exponent);
  if (!Number.isFinite(value)) return { ok: false, fault: { code: 'too-large', name, typed: shorten(tidy) } };
  return { ok: true, value, unit: unit.trim() };
}

/** Keeps a message readable when somebody pastes a page into a field. */
export function shorten(text: string): string {
  const oneLine = text.replace(/\s+/g, ' ');
  return oneLine.length > 24 ? `${oneLine.slice(0, 23)}…` : oneLine;
}
