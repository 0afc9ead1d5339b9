/**
 * What hands do, as far as following a column must know it. Half widths, seconds, nepers, radians. Fitted on
 * recordings of two simulated worlds (tests/bench/following); what is measured of hands is rare.
 */
export const HAND = {
  /** Unsteadiness of level (Np) and phase (rad) alike, standard, and the time over which it keeps itself in mind, s. */
  unrest: 0.08,
  memoryS: 0.6,
  /** Slow drift beside it, per root second: of level and phase, of their slopes (1/s), of the column's share (relative). */
  drift: 0.02,
  slopeDrift: 0.003,
  shareDrift: 0.015,
  /** Wavering of the speed, per root second: at rest (half widths per s), and as a part of the speed. */
  waver: 2,
  waverShare: 1,
  /** Sudden changes of speed: how many a second, what is left of the speed, and how large the new one is. */
  changesPerS: 0.6,
  changeKeeps: 0.2,
  change: 3,
  changeShare: 0.5,
  /** A hand comes back to what it looks for: acceleration per half width off, 1/s². */
  pull: 2,
  /** How long it keeps its speed, s. */
  speedMemoryS: 2,
  /** Small things that are no motion at all, half widths per root second. */
  jitter: 0.02,
} as const;
