/** A typed value that was understood, or what is wrong with it and what to do. */
export type Parsed<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly message: string };

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
 * @param name  what the number is, for the message
 */
export function parseDecimal(text: string, name = 'value'): Parsed<TypedNumber> {
  const tidy = text
    .replace(/[\u00a0\u2007\u202f]/g, ' ')
    .replace(/[\u2212\u2013]/g, '-')
    .trim();
  if (tidy === '') return { ok: false, message: `The ${name} is empty. Type a number such as 15.8 or 15,8.` };
  const match = NUMBER.exec(tidy);
  if (match === null) return { ok: false, message: `“${shorten(tidy)}” is no number for the ${name}.` };
  const [, sign = '', digits = '', exponent = '', unit = ''] = match;
  if (/^[.,\d]/.test(unit)) {
    return {
      ok: false,
      message: `“${shorten(tidy)}” has more than one decimal sign or a gap in it. Write the ${name} like 1234.5.`,
    };
  }
  const value = Number(sign + digits.replace(',', '.') + exponent);
  if (!Number.isFinite(value))
    return { ok: false, message: `“${shorten(tidy)}” is too large for the ${name}.` };
  return { ok: true, value, unit: unit.trim() };
}

/** Keeps a message readable when somebody pastes a page into a field. */
export function shorten(text: string): string {
  const oneLine = text.replace(/\s+/g, ' ');
  return oneLine.length > 24 ? `${oneLine.slice(0, 23)}…` : oneLine;
}
