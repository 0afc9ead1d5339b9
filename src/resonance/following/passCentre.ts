import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { DetectedPassage } from '../passages/detectedPassage.ts';
import { ANY_COLUMN } from './columnGuess.ts';
import type { ColumnGuess } from './columnGuess.ts';
import type { SteadyPass } from './passFit.ts';
import { likeliestPass, runPass } from './passRun.ts';
import type { CentreMoment } from './passRun.ts';

/** A strike's own sounds are over after this, s. */
const STRUCK_S = 0.3;
/** What is heard so long after the level's peak still tells of the pass: half widths, and s. */
const AFTER_HALF_WIDTHS = 4;
const AFTER_S = 0.3;

/** A flagged passage as a steady slide, to begin with. */
export const steadyPass = ({ timeS, features, direction }: DetectedPassage): SteadyPass => ({
  centreS: timeS,
  halfWidthS: Math.exp(features.logHalfWidth),
  direction,
});

/** Index of the first value that counts of a sounding that began then. */
export const firstIndexOf = (startS: number, rateHz: number): number =>
  Math.max(0, Math.round((startS + STRUCK_S) * rateHz));

/**
 * When the length was right during a passage, ring-up and interference with the direct sound taken out.
 * @param offsetHz  of the fork beside the frequency moved to 0 Hz, to 0.1 Hz or better
 * @param sounding  from where to where the fork sounds, s; what isn't heard yet is left out
 * @returns null where the sounding ends before it begins to count
 */
export function passCentre(
  series: ToneSeries,
  passage: DetectedPassage,
  offsetHz: number,
  sounding: { readonly startS: number; readonly endS: number | null },
  guesses: readonly ColumnGuess[] = ANY_COLUMN,
): CentreMoment | null {
  const pass = steadyPass(passage);
  const untilS = Math.min(
    pass.centreS + AFTER_HALF_WIDTHS * pass.halfWidthS + AFTER_S,
    sounding.endS ?? Infinity,
  );
  const untilIndex = Math.min(series.length, Math.floor(untilS * series.rateHz));
  const fromIndex = firstIndexOf(sounding.startS, series.rateHz);
  if (untilIndex <= fromIndex) return null;
  const order = { series, offsetHz, fromIndex, untilIndex, pass };
  return likeliestPass(runPass(order, guesses)).centre;
}
