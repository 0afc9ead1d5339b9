import type { Complex } from '../../numeric/complex.ts';

/** The loudest place of a column that is slid through its resonance slowly, against the resonance itself. */
export interface LoudestPlace {
  /** How far it lies from resonance, half widths, > 0 where the column is too long there. */
  readonly halfWidths: number;
  /** Size of the sound there, the fork's direct sound being 1; never below 1. */
  readonly size: number;
}

/**
 * What is heard of a column that rests, the fork's direct sound being 1: z = 1 + s/(1 + ix).
 * @param share  s, the column's part over the direct sound at resonance, m e^{iθ}
 * @param halfWidths  x, how far the column is from resonance, > 0 too long; any
 * @example
 * phasorAt({ re: 2, im: 0 }, 1) // → { re: 2, im: -1 }
 */
export function phasorAt(share: Complex, halfWidths: number): Complex {
  const power = 1 + halfWidths * halfWidths;
  return {
    re: 1 + (share.re + halfWidths * share.im) / power,
    im: (share.im - halfWidths * share.re) / power,
  };
}

/**
 * Where |1 + s/(1 + ix)| is greatest. With x = tan φ, 1/(1 + ix) = (1 + e^{-2iφ})/2: the phasor runs once round a
 * circle about 1 + s/2 of radius |s|/2. Its point farthest from zero lies where s e^{-2iφ} points as 1 + s/2 does, so
 * 2φ = arg s - arg(1 + s/2) = arg(|s|²/2 + s), and the tangent of half an angle gives x = Im s / (w + √(w² + Im² s)),
 * w = |s|²/2 + Re s.
 * @param share  s = m e^{iθ}
 * @returns null where the sound is nowhere louder than far away: no column's part, or one that only takes away
 * @example
 * loudestPlace({ re: 2, im: 0 }) // → { halfWidths: 0, size: 3 }
 */
export function loudestPlace({ re, im }: Complex): LoudestPlace | null {
  const along = (re * re + im * im) / 2 + re;
  const below = along + Math.hypot(along, im);
  if (!(below > 0)) return null;
  return {
    halfWidths: im / below,
    size: Math.hypot(1 + re / 2, im / 2) + Math.hypot(re, im) / 2,
  };
}
