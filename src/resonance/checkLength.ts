import type { ToneSeries } from '../tone/toneSeries.ts';

/** Is the column, left at one length, at resonance? */
export interface LengthCheck {
  readonly verdict: 'resonant' | 'not-resonant' | 'cannot-tell';
  /** Rise of the tone with the fork at the mouth over the fork away from it, dB; null where nothing was compared. */
  readonly riseDb: number | null;
  readonly standardUncertaintyDb: number | null;
  /** Times that the fork came or went. */
  readonly comparisons: number;
}

/** @param rangeHz  how far the fork may be off the frequency moved to 0 Hz */
export function checkLength(_series: ToneSeries, _rangeHz: number): LengthCheck {
  return { verdict: 'cannot-tell', riseDb: null, standardUncertaintyDb: null, comparisons: 0 };
}
