/*
 * Numbers inside the solver's sentences and steps. The values themselves are never rounded: these are words.
 */

/** With a fixed count of decimals; never "-0". */
export function inWords(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** With a count of significant digits, no exponent for usual sizes. */
export function significant(value: number, digits: number): string {
  if (value === 0) return '0';
  const decimals = Math.min(Math.max(digits - 1 - Math.floor(Math.log10(Math.abs(value))), 0), 12);
  return inWords(value, decimals);
}

/** Metres as centimetres to the tenth of a millimetre. */
export function centimetres(lengthM: number): string {
  return inWords(lengthM * 100, Math.abs(lengthM) < 0.01 ? 2 : 1);
}

/** "a, b and c". */
export function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1) ?? ''}`;
}
