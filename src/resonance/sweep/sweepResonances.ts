import { sweepCurve } from '../../tone/sweepCurve.ts';
import type { SweepLevel } from '../../tone/sweepCurve.ts';
import type { SweepFrame } from '../../tone/sweepTrack.ts';
import { sweepPeaks } from './sweepPeaks.ts';
import type { SweepPeak } from './sweepPeaks.ts';

/** What a sweep up and back found. */
export interface SweepResonances {
  /** Level on the way up, by rising frequency; null where no sweep was heard. */
  readonly up: readonly SweepLevel[] | null;
  readonly down: readonly SweepLevel[] | null;
  /** Heard both ways, lowest first. */
  readonly resonances: readonly SweepPeak[];
}

/** Further apart than this, two maxima of both ways aren't the same resonance, Hz. */
const SAME_HZ = 8;

/**
 * Resonances of a column of fixed length from a tone that rises and falls again at the same rate. The column answers
 * late, so each maximum comes too high on the way up and by as much too low on the way back: the mean of both is right
 * whatever the delay. What was heard one way only is left out.
 * @param rateHzPerS  of the sweep, > 0
 */
export function sweepResonances(frames: readonly SweepFrame[], rateHzPerS: number): SweepResonances {
  const up = sweepCurve(frames, rateHzPerS);
  const down = sweepCurve(frames, -rateHzPerS);
  const there = up === null ? [] : sweepPeaks(up);
  const back = down === null ? [] : sweepPeaks(down);
  const resonances = there.flatMap((one): SweepPeak[] => {
    const gapHz = (other: SweepPeak): number => Math.abs(other.frequencyHz - one.frequencyHz);
    const other = [...back].sort((a, b) => gapHz(a) - gapHz(b)).at(0);
    if (other === undefined || gapHz(other) > SAME_HZ) return [];
    return [
      {
        frequencyHz: (one.frequencyHz + other.frequencyHz) / 2,
        standardUncertaintyHz: Math.hypot(one.standardUncertaintyHz, other.standardUncertaintyHz) / 2,
        halfWidthHz: (one.halfWidthHz + other.halfWidthHz) / 2,
        riseDb: (one.riseDb + other.riseDb) / 2,
      },
    ];
  });
  return { up, down, resonances };
}
