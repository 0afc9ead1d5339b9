/*
 * Numbers inside the solver's sentences and steps. The values themselves are never rounded: these are words.
 */

/** With a fixed count of decimals; never "-0". */
export function inWords(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** Smaller ones are written as powers of ten. */
const LEAST_PLAIN = 1e-6;

/** With a count of significant digits, as a power of ten below a millionth. */
export function significant(value: number, digits: number): string {
  if (value === 0) return '0';
  // What rounds up to the next power of ten has a decimal less: 0.0996 is 0.10.
  const [mantissa = '', exponent = '0'] = value.toExponential(digits - 1).split('e');
  if (Math.abs(value) < LEAST_PLAIN) return `${mantissa.replace('-', '−')} · 10${raised(Number(exponent))}`;
  return inWords(value, Math.max(digits - 1 - Number(exponent), 0));
}

/** A pitch to the hundredth of a hertz, without zeros at its end: 512, 341.3. */
export function pitch(frequencyHz: number): string {
  return String(Number(frequencyHz.toFixed(2)));
}

/** "1 degree", "2 degrees". */
export function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

function raised(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit))).join('');
  return exponent < 0 ? `⁻${digits}` : digits;
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
