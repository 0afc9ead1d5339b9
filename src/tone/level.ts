/**
 * The one place that says what 0 dB means: a sine of amplitude 1, whose mean square is one half.
 */
export const REFERENCE_MEAN_SQUARE = 0.5;

/** A natural logarithm of a ratio of powers times this is the ratio in dB. */
export const DB_PER_LN_POWER = 10 / Math.LN10;

/**
 * Level of a mean square, dB re a sine of amplitude 1. @returns -Infinity for 0
 * @example
 * levelDb(0.5) // → 0
 */
export function levelDb(meanSquare: number): number {
  return 10 * Math.log10(meanSquare / REFERENCE_MEAN_SQUARE);
}

/**
 * Ratio of two powers (any common unit), dB.
 * @example
 * ratioDb(200, 2) // → 20
 */
export function ratioDb(power: number, referencePower: number): number {
  return 10 * Math.log10(power / referencePower);
}
