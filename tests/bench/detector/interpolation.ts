/** Cubic (Catmull and Rom) interpolation. @param at  index, 1 up to the length − 3 */
export function between(samples: Float32Array, at: number): number {
  const j = Math.floor(at);
  const t = at - j;
  const a = samples[j - 1];
  const b = samples[j];
  const c = samples[j + 1];
  const d = samples[j + 2];
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}
