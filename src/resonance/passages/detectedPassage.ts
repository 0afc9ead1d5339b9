import type { ToneView } from '../toneView.ts';
import type { JudgedCandidate } from './candidates.ts';
import type { PassageFeatures } from './passageFeatures.ts';
import { certaintyOf, flagProbability } from './passageProbability.ts';
import type { Certainty, PassageClassifier } from './passageProbability.ts';
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
  /** That it is one, 0..1: of flags told 0.9, nine of ten are right. */
  readonly probability: number;
  readonly certainty: Certainty;
  /** Noise at the peak, mean square per Hz. */
  readonly noiseDensity: number;
  /** Its indices belong to the view. */
  readonly features: PassageFeatures;
}

/**
 * @param judgement  which judgement flags it, see `judgementOf`; 0 offline
 * @param view  the one that the candidate's indices belong to
 */
export function detectedPassage(
  { match, features, score }: JudgedCandidate,
  classifier: PassageClassifier,
  judgement: number,
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
    probability: flagProbability(classifier, score, judgement),
    certainty: certaintyOf(classifier, score),
    noiseDensity: view.noiseDensity[features.peakIndex],
    features,
  };
}
