import { passageCourse } from './passageMeasures.ts';
import type { PassageEvidence } from './passageFeatures.ts';
import type { JudgedCandidate } from './candidates.ts';
import type { SlideDirection } from './passageTemplates.ts';
import type { ToneView } from '../toneView.ts';

/** A passage that was found, freed of the view that it was found in. */
export interface SeenPassage {
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
  readonly evidence: PassageEvidence;
}

/** @param view  the one that the event's indices belong to */
export function seenPassage({ fit, evidence, probability }: JudgedCandidate, view: ToneView): SeenPassage {
  const toS = (index: number): number => (index + view.firstIndex) / view.rateHz;
  const course = passageCourse(view, evidence);
  return {
    timeS: toS(evidence.peakIndex),
    halfPowerStartS: toS(course.halfPowerStart),
    halfPowerEndS: toS(course.halfPowerEnd),
    phaseSwingRad: course.phaseSwingRad,
    direction: fit.direction,
    probability,
    noiseDensity: view.noiseDensity[evidence.peakIndex] ?? 0,
    evidence: { ...evidence },
  };
}
