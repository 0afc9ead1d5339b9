import type { FrequencyEstimator } from '../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import type { SoundingSpan } from './soundings.ts';

/** The strike's clang and the damping hand, s. */
const CLANG_S = 0.15;
const DAMPING_S = 0.1;
/**
 * Most of a sounding that its frequency is taken from, s: by then a fork has died away, while a tone that goes on for an
 * hour must not cost the square of its length.
 */
const LONGEST_S = 60;
/** What the column's own shift turns the phase by from one end of a sounding to the other, rad. */
const SHIFT_RAD = 0.3;

/** A fork's frequency, relative to the one that was moved to 0 Hz. */
export interface ForkFrequency {
  readonly offsetHz: number;
  readonly standardUncertaintyHz: number;
}

/**
 * The fork's frequency in one sounding. To the statistical error is added what a slow shift of phase can do that no
 * statistics sees: the column's own shift while it is slid, up to about 0.3 rad from one end of the sounding to the other.
 */
export function soundingFrequency(
  series: ToneSeries,
  span: SoundingSpan,
  estimator: FrequencyEstimator,
  noiseMeanSquare: number,
): ForkFrequency | null {
  const values = (timeS: number): number => Math.round(timeS * series.rateHz);
  const from = span.from + values(CLANG_S);
  const to = Math.min(span.to - values(DAMPING_S), from + values(LONGEST_S));
  const estimate = estimator.estimate(series.segment(from, to), noiseMeanSquare);
  if (estimate === null) return null;
  const shiftHz = SHIFT_RAD / (2 * Math.PI * ((to - from) / series.rateHz));
  return {
    offsetHz: estimate.offsetHz,
    standardUncertaintyHz: Math.hypot(estimate.standardUncertaintyHz, shiftHz),
  };
}

/** Weighted mean of the soundings' frequencies; scatter beyond their errors widens the result (Birge ratio). */
export function combineFrequencies(frequencies: readonly ForkFrequency[]): ForkFrequency | null {
  let [sw, s] = [0, 0];
  for (const one of frequencies) {
    sw += one.standardUncertaintyHz ** -2;
    s += one.offsetHz * one.standardUncertaintyHz ** -2;
  }
  if (!(sw > 0)) return null;
  const offsetHz = s / sw;
  let chiSquare = 0;
  for (const one of frequencies) chiSquare += ((one.offsetHz - offsetHz) / one.standardUncertaintyHz) ** 2;
  const birge = frequencies.length > 1 ? Math.max(1, Math.sqrt(chiSquare / (frequencies.length - 1))) : 1;
  return { offsetHz, standardUncertaintyHz: birge / Math.sqrt(sw) };
}
