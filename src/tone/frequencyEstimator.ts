import { BLOCK } from './blockPhases.ts';
import { CoarseFrequency } from './coarseFrequency.ts';
import { fitPhaseRegression } from './phaseRegression.ts';
import type { FrequencyEstimate } from './phaseRegression.ts';
import type { ToneSegment } from './toneSegment.ts';

export type { FrequencyEstimate } from './phaseRegression.ts';

/**
 * Frequency of the strongest steady tone in a segment: coarse from spectra, fine from a robust regression on the phase.
 * It owns the spectra's workspace; an estimate depends on its arguments alone.
 */
export class FrequencyEstimator {
  private readonly coarse = new CoarseFrequency();
  private readonly rangeHz: number;

  /** @param rangeHz  how far from 0 Hz the tone may be, > 0 */
  constructor(rangeHz: number) {
    this.rangeHz = rangeHz;
  }

  /**
   * @param segment  at least 30 values
   * @param noiseMeanSquare  mean |noise|² of one value
   * @returns null where the segment is too short, nothing but zeros, or where all that is in reach is the foot of a tone
   *   outside of it
   */
  estimate(segment: ToneSegment, noiseMeanSquare: number): FrequencyEstimate | null {
    if (segment.to - segment.from < 3 * BLOCK) return null;
    const coarseHz = this.coarse.find(segment, this.rangeHz);
    return coarseHz === null ? null : fitPhaseRegression(segment, coarseHz, noiseMeanSquare);
  }
}
