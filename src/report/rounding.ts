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

/**
 * A number with a fixed count of decimals and a true minus sign; never "−0".
 * @param decimals  negative ones round to tens, hundreds…
 */
export function fixed(value: number, decimals: number): string {
  const step = decimals < 0 ? 10 ** -decimals : 1;
  const text = roundTo(value, step).toFixed(Math.max(decimals, 0));
  const bare = text.replace('-', '');
  return text.startsWith('-') && Number(bare) !== 0 ? MINUS + bare : bare;
}

function roundTo(value: number, step: number): number {
  return step === 1 ? value : Math.round(value / step) * step;
}

/** A number with its sign, for differences and residuals. */
export function signed(value: number, decimals: number): string {
  const text = fixed(value, decimals);
  return text.startsWith(MINUS) || Number(text) === 0 ? text : `+${text}`;
}

function decimalsOf(uncertainty: number): number {
  const exponent = Math.floor(Math.log10(uncertainty));
  // 0.0996 rounds to 0.10, not to 0.100.
  const lead = uncertainty / 10 ** exponent;
  return lead >= 9.95 ? -exponent : 1 - exponent;
}

/** 1st, 2nd, 3rd, 4th… */
export function ordinal(order: number): string {
  const tens = order % 100;
  if (tens >= 11 && tens <= 13) return `${order}th`;
  return `${order}${['th', 'st', 'nd', 'rd'][order % 10] ?? 'th'}`;
}
