/**
 * How much exact wall losses slow the wave at 20 °C: radius in mm, then v − c in m/s at 256, 512 and 1024 Hz.
 * Computed from Zwikker & Kosten 1949, ch. II, with Keefe's constants (1984), by a numerical library.
 */
export const WALL_SLOWINGS = [
  [10, -3.436, -2.437, -1.727],
  [12.5, -2.754, -1.952, -1.383],
  [15, -2.298, -1.628, -1.153],
  [20, -1.727, -1.223, -0.866],
  [25, -1.383, -0.979, -0.693],
] as const;
