import type { ToneView } from '../toneView.ts';
import type { JudgedCandidate } from './candidates.ts';
import type { PassageFeatures } from './passageFeatures.ts';
import { measurePassage } from './passageMeasures.ts';
import type { SlideDirection } from './passageTemplates.ts';

/** A passage that was found, freed of the view that it was found in. */
export interface DetectedPassage {
  /** When the level peaked, on the source's time axis. */
  readonly timeS: number;
  /** The two half-power moments. */
  readonly halfPowerStartS: number;
  readonly halfPowerEndS: number;
  /** Full swing of the tone's phase through the passage, rad. */
  readonly phaseSwingRad: number;
  /** Which way the phase turned: 1 as in a column that grows longer, −1 as in one that grows shorter. */
  readonly direction: SlideDirection;
  /** 0..1. */
  readonly probability: number;
  /** Noise at the peak, mean square per Hz. */
  readonly noiseDensity: number;
  /** Its indices belong to the view. */
  readonly features: PassageFeatures;
}

/** @param view  the one that the candidate's indices belong to */
export function detectedPassage(
  { match, features, probability }: JudgedCandidate,
  view: ToneView,
): DetectedPassage {
  const toS = (index: number): number => (index + view.firstIndex) / view.rateHz;
  const measures = measurePassage(view, features);
  return {
    timeS: toS(features.peakIndex),
    halfPowerStartS: toS(measures.halfPowerStart),
    halfPowerEndS: toS(measures.halfPowerEnd),
    phaseSwingRad: measures.phaseSwingRad,
    direction: match.direction,
    probability,
    noiseDensity: view.noiseDensity[features.peakIndex],
    features,
  };
}
