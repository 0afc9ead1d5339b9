import { sweepCurve } from '../../tone/sweepCurve.ts';
import type { SweepCurve } from '../../tone/sweepCurve.ts';
import type { SweepFrame, SweepGap } from '../../tone/sweepTrack.ts';
import { sweepPeaks } from './sweepPeaks.ts';
import type { SweepPeak } from './sweepPeaks.ts';

/** What a sweep up and back found. */
export interface SweepResonances {
  /** Level on the way up; null where no sweep was heard. */
  readonly up: SweepCurve | null;
  readonly down: SweepCurve | null;
  /** Heard both ways, lowest first. */
  readonly resonances: readonly SweepPeak[];
  /** Frequencies near which there may be a resonance that lost sound leaves unknown, lowest first. */
  readonly voidHz: readonly number[];
  /** How often the sound broke off. */
  readonly gaps: number;
  /** Sound that was lost, s. */
  readonly lostS: number;
}

/** Further apart than this, two maxima of both ways aren't the same resonance, Hz. */
const SAME_HZ = 8;
/**
 * Half widths to each side within which a resonance must be whole. With 0.3 s lost further off than one, a practice
 * column's resonance moved by up to 3.2 of its standard uncertainties, further off than three by less than 1.
 */
const WHOLE_WIDTHS = 3;

/**
 * Resonances of a column of fixed length from a tone that rises and falls again at the same rate. The column answers
 * late, so each maximum comes too high on the way up and by as much too low on the way back: the mean of both is right
 * whatever the delay. What was heard one way only is left out, and so is what sound was lost at: a shape without its
 * middle has its maximum elsewhere.
 * @param rateHzPerS  of the sweep, > 0
 * @param gaps  where sound was lost, in the frames' time
 */
export function sweepResonances(
  frames: readonly SweepFrame[],
  rateHzPerS: number,
  gaps: readonly SweepGap[] = [],
): SweepResonances {
  const up = sweepCurve(frames, rateHzPerS, gaps);
  const down = sweepCurve(frames, -rateHzPerS, gaps);
  const there = up === null ? [] : sweepPeaks(up.levels);
  const back = down === null ? [] : sweepPeaks(down.levels);
  const resonances: SweepPeak[] = [];
  const voidHz: number[] = [];
  for (const one of there) {
    const other = nearest(back, one.frequencyHz);
    if (touches(up, one, 0) || (other === null ? touches(down, one, SAME_HZ) : touches(down, other, 0))) {
      voidHz.push(one.frequencyHz);
    } else if (other !== null) {
      resonances.push({
        frequencyHz: (one.frequencyHz + other.frequencyHz) / 2,
        standardUncertaintyHz: Math.hypot(one.standardUncertaintyHz, other.standardUncertaintyHz) / 2,
        halfWidthHz: (one.halfWidthHz + other.halfWidthHz) / 2,
        riseDb: (one.riseDb + other.riseDb) / 2,
      });
    }
  }
  for (const one of back) {
    if (nearest(there, one.frequencyHz) === null && touches(up, one, SAME_HZ)) voidHz.push(one.frequencyHz);
  }
  return {
    up,
    down,
    resonances,
    voidHz: apart(voidHz),
    gaps: gaps.length,
    lostS: gaps.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0),
  };
}

/** Frequencies in order, each once: what is left of one resonance may look like two. */
function apart(frequenciesHz: readonly number[]): readonly number[] {
  const kept: number[] = [];
  for (const hz of [...frequenciesHz].sort((one, other) => one - other)) {
    if (hz - (kept.at(-1) ?? -Infinity) > 2 * SAME_HZ) kept.push(hz);
  }
  return kept;
}

/** The same resonance on the other way; null where it wasn't heard there. */
function nearest(peaks: readonly SweepPeak[], frequencyHz: number): SweepPeak | null {
  const gapHz = (peak: SweepPeak): number => Math.abs(peak.frequencyHz - frequencyHz);
  const [best] = [...peaks].sort((a, b) => gapHz(a) - gapHz(b));
  return best === undefined || gapHz(best) > SAME_HZ ? null : best;
}

/** Whether sound was lost too near a resonance. @param beyondHz  how much further it may lie */
function touches(
  curve: SweepCurve | null,
  { frequencyHz, halfWidthHz }: SweepPeak,
  beyondHz: number,
): boolean {
  const reachHz = WHOLE_WIDTHS * halfWidthHz + beyondHz;
  return (
    curve?.holes.some(
      ({ fromHz, toHz }) => fromHz <= frequencyHz + reachHz && toHz >= frequencyHz - reachHz,
    ) ?? false
  );
}
