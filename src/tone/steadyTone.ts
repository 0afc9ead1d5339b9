import { DB_PER_LN_POWER } from './level.ts';

/** A tone that stood through much of what was heard. */
export interface SteadyTone {
  /** Relative to the fork's stamped frequency, Hz; good to a tenth of the bins' distance. */
  readonly offsetHz: number;
  /** Mean level over the floor of its surroundings, dB. */
  readonly aboveFloorDb: number;
}

/** A voice's harmonics wander over many bins; a line has to stand this far above the floor on average, dB. */
const LEAST_DB = 10;

/**
 * The mean over all frames of the side bands of each bin's logarithm over the frame's floor: a tone that stays counts in full, one
 * that comes and goes hardly. Tells what was there where the expected fork was not.
 */
export class SteadyToneFinder {
  private readonly sums: Float64Array;
  private readonly binHz: number;
  private frames = 0;

  /** @param bins  of the wide stream's spectrum, 0 Hz first, negative offsets in the upper half */
  constructor(bins: number, binHz: number) {
    this.sums = new Float64Array(bins);
    this.binHz = binHz;
  }

  /** @param spectrum  re and im by turns @param floor  power that a bin of noise has, > 0 */
  push(spectrum: ArrayLike<number>, floor: number): void {
    const sums = this.sums;
    for (let bin = 0; bin < sums.length; bin += 1) {
      const re = spectrum[2 * bin];
      const im = spectrum[2 * bin + 1];
      sums[bin] = sums[bin] + Math.log((re * re + im * im) / floor + 1e-3);
    }
    this.frames += 1;
  }

  /**
   * The strongest line between two offsets.
   * @returns null where none stands out
   */
  strongest(fromHz: number, toHz: number): SteadyTone | null {
    const bins = this.sums.length;
    const at = (offset: number): number => this.sums[(offset + bins) % bins];
    let best: number | null = null;
    for (let offset = Math.ceil(fromHz / this.binHz); offset <= Math.floor(toHz / this.binHz); offset += 1) {
      if (at(offset) < at(offset - 1) || at(offset) < at(offset + 1)) continue;
      if (best === null || at(offset) > at(best)) best = offset;
    }
    if (best === null) return null;
    const aboveFloorDb = (DB_PER_LN_POWER * at(best)) / Math.max(1, this.frames);
    if (aboveFloorDb < LEAST_DB) return null;
    // A window's main lobe is a parabola in decibels, nearly.
    const curve = at(best - 1) - 2 * at(best) + at(best + 1);
    const shift = curve < 0 ? (0.5 * (at(best - 1) - at(best + 1))) / curve : 0;
    return { offsetHz: (best + shift) * this.binHz, aboveFloorDb };
  }
}
