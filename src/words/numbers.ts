import { LANGUAGES, language } from './language.ts';

/*
 * Numbers for people, in the form of the language in use. Nothing else rounds: values are handed on in full, and only
 * what is shown is written here.
 */

/** A value and its uncertainty, rounded together. */
export interface RoundedPair {
  readonly value: string;
  readonly uncertainty: string;
}

const MINUS = '−';

/**
 * Rounds a value to the last digit that its uncertainty leaves meaningful.
 * The uncertainty keeps two significant digits (GUM, JCGM 100:2008, 7.2.6: at most two).
 * @param uncertainty  > 0, in the same unit
 * @throws RangeError if the uncertainty isn't above 0
 */
export function roundPair(value: number, uncertainty: number): RoundedPair {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) {
    throw new RangeError(`uncertainty must be above 0, got ${uncertainty}`);
  }
  const decimals = decimalsOf(uncertainty);
  return { value: fixed(value, decimals), uncertainty: fixed(uncertainty, decimals) };
}

/** Decimals of an uncertainty with two significant digits, below 0 where it is that large. @param uncertainty  > 0 */
export function decimalsOf(uncertainty: number): number {
  const exponent = Math.floor(Math.log10(uncertainty));
  // 0.0996 rounds to 0.10, not to 0.100.
  const lead = uncertainty / 10 ** exponent;
  return lead >= 9.95 ? -exponent : 1 - exponent;
}

/**
 * A number with a fixed count of decimals and a true minus sign; never "−0".
 * @param decimals  negative ones round to tens, hundreds…
 */
export function fixed(value: number, decimals: number): string {
  const step = decimals < 0 ? 10 ** -decimals : 1;
  const text = roundTo(value, step).toFixed(Math.max(decimals, 0));
  const bare = text.replace('-', '');
  return localForm(text.startsWith('-') && Number(bare) !== 0 ? text : bare);
}

/** A number as a program writes it, with the language's decimal sign and a true minus sign. */
function localForm(text: string): string {
  return text.replace('-', MINUS).replace('.', LANGUAGES[language].decimalSign);
}

function roundTo(value: number, step: number): number {
  return step === 1 ? value : Math.round(value / step) * step;
}

/** A number as a terminal and other programs read it: a fixed count of decimals, a plain minus sign. */
export function plainFixed(value: number, decimals: number): string {
  return value.toFixed(decimals);
}

/** A number with its sign, for differences and residuals. */
export function signed(value: number, decimals: number): string {
  const text = fixed(value, decimals);
  return text.startsWith(MINUS) || !/[1-9]/.test(text) ? text : `+${text}`;
}

/** Smaller ones are written as powers of ten. */
const LEAST_PLAIN = 1e-6;

/** With a count of significant digits, as a power of ten below a millionth. */
export function significant(value: number, digits: number): string {
  if (value === 0) return '0';
  // What rounds up to the next power of ten has a decimal less: 0.0996 is 0.10.
  const [mantissa = '', exponent = '0'] = value.toExponential(digits - 1).split('e');
  if (Math.abs(value) < LEAST_PLAIN) return `${localForm(mantissa)} · 10${raised(Number(exponent))}`;
  return fixed(value, Math.max(digits - 1 - Number(exponent), 0));
}

function raised(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit))).join('');
  return exponent < 0 ? `⁻${digits}` : digits;
}

/** A number that is round already, such as one on an axis, with all its digits and a true minus sign. */
export function unrounded(value: number): string {
  return localForm(String(value));
}

/** With at most two decimals, without zeros at their end: 512, 341.3. */
export function short(value: number): string {
  return localForm(String(Number(value.toFixed(2))));
}

/** A part of one in whole percents, without the sign: 0.934 as 93. */
export function percent(part: number): string {
  return fixed(100 * part, 0);
}

/** A frequency to the hundredth of a hertz: 512, 341.3. */
export function hertz(frequencyHz: number): string {
  return short(frequencyHz);
}

/** A frequency in kilohertz: 4, 44.1. */
export function kilohertz(frequencyHz: number): string {
  return short(frequencyHz / 1000);
}

/** A fork's frequency as it is stamped, whole or with one decimal: 512, 426.6. */
export function stampedHertz(frequencyHz: number): string {
  return fixed(frequencyHz, frequencyHz % 1 === 0 ? 0 : 1);
}

/** Metres as centimetres to the tenth of a millimetre. */
export function centimetres(lengthM: number): string {
  return fixed(lengthM * 100, Math.abs(lengthM) < 0.01 ? 2 : 1);
}

/** Metres as centimetres in full, without the noise of a change of units: 15.8, −4.2. */
export function fullCentimetres(lengthM: number): string {
  return tidy(lengthM * 100, 8);
}

/** Metres as millimetres in full, without the noise of a change of units. */
export function fullMillimetres(lengthM: number): string {
  return tidy(lengthM * 1000, 8);
}

/** A size in megabytes of 10⁶ bytes, with its unit and one decimal below 10 of them. @param bytes  >= 0 */
export function megabytes(bytes: number): string {
  return `${fixed(bytes / 1e6, bytes < 1e7 ? 1 : 0)} ${LANGUAGES[language].megabyte}`;
}

/** A number with its digits, without the noise of a change of units. @param digits  significant ones at most */
export function tidy(value: number, digits = 12): string {
  return localForm(String(Number(value.toPrecision(digits))));
}
