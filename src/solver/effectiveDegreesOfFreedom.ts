/** A part of a standard uncertainty, with its own degrees of freedom. */
interface Part {
  readonly contributionMps: number;
  readonly degreesOfFreedom: number;
}

/**
 * Effective degrees of freedom of a sum of independent contributions.
 * @param contributions  at least one
 * @returns infinity never: at least one contribution has finitely many
 * @see Welch 1947 and Satterthwaite 1946; JCGM 100:2008, G.4.1
 * @example
 * const reading = { contributionMps: 1, degreesOfFreedom: 4 };
 * effectiveDegreesOfFreedom([reading, reading]) // → 8
 */
export function effectiveDegreesOfFreedom(contributions: readonly Part[]): number {
  const square = contributions.reduce((sum, { contributionMps: u }) => sum + u * u, 0);
  const spread = contributions.reduce(
    (sum, { contributionMps: u, degreesOfFreedom }) => sum + u ** 4 / degreesOfFreedom,
    0,
  );
  // Where one exact mark leaves no uncertainty at all, the first line's degrees stand.
  return spread > 0 ? (square * square) / spread : contributions[0].degreesOfFreedom;
}
