import { gatherEvidence } from './passageFeatures.ts';
import type { PassageEvidence } from './passageFeatures.ts';
import type { Strongest } from './perceptron.ts';
import type { PassageFit, Reused } from './matchedFilter.ts';
import { smoothedPower } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/** Statistic below which a fit isn't looked at further. */
export const LEAST_STATISTIC = 5;
/** Statistic from which a fit counts when the strongest of a recording is named. */
const SURE_STATISTIC = 15;
/** Between two passages the level falls at least to this part of the weaker one's power (−3 dB). */
const DIP = 0.5;
/** And to this part (−10 dB) where they are nearer than their shapes reach: a wobbling hand makes dips in one maximum. */
const DEEP_DIP = 0.1;
/** How far a shape reaches, in half widths. */
const REACH = 1.5;
const CLOSEST_S = 0.3;
/** Peaks further apart than this are never the same passage, s. */
export const APART_S = 4;

/** Something that may be a passage. */
export interface Candidate {
  readonly fit: PassageFit;
  readonly evidence: PassageEvidence;
}

export interface JudgedCandidate extends Candidate {
  readonly probability: number;
}

/**
 * Evidence for one fit as it could be had live: from no more than the fit's own window after its middle.
 * @param evidence  is filled
 */
export function liveEvidence(view: ToneView, fit: PassageFit, evidence: Reused<PassageEvidence>): void {
  const limit = Math.round(fit.middle + fit.template.after * fit.template.step);
  gatherEvidence(view, fit, Math.min(view.length - 1, limit), evidence);
}

/** Keeps the strongest of all sure candidates. @param strongest  of those before; is raised where this one is stronger */
export function noteStrongest({ fit, evidence }: Candidate, strongest: Reused<Strongest>): void {
  if (fit.statistic < SURE_STATISTIC) return;
  strongest.peakPower = Math.max(strongest.peakPower, evidence.peakPower);
}

/** What tells whether two peaks are one passage. */
export type Peak = Pick<PassageEvidence, 'peakIndex' | 'peakPower' | 'width'>;

/** Are two peaks the same passage: no clear dip of the level between them? Indices into the view. */
export function samePassage(view: ToneView, a: Peak, b: Peak): boolean {
  const from = Math.min(a.peakIndex, b.peakIndex);
  const to = Math.max(a.peakIndex, b.peakIndex);
  const apartS = (to - from) / view.rateHz;
  if (apartS < CLOSEST_S) return true;
  if (apartS > APART_S) return false;
  const width = Math.exp(Math.min(a.width, b.width));
  const half = Math.max(2, Math.min(15, Math.round(0.25 * width * view.rateHz)));
  let lowest = Infinity;
  for (let k = from; k <= to; k += 1) lowest = Math.min(lowest, smoothedPower(view, k, half));
  const isNear = apartS < REACH * Math.exp(Math.max(a.width, b.width));
  return lowest > (isNear ? DEEP_DIP : DIP) * Math.min(a.peakPower, b.peakPower);
}

/** Of all candidates that are to be flagged the one that stands for each passage. @returns in order of probability */
export function chooseEvents(
  view: ToneView,
  flagged: readonly JudgedCandidate[],
): readonly JudgedCandidate[] {
  if (flagged.length < 2) return flagged;
  const chosen: JudgedCandidate[] = [];
  for (const candidate of [...flagged].sort((a, b) => b.probability - a.probability)) {
    if (!chosen.some((other) => samePassage(view, other.evidence, candidate.evidence)))
      chosen.push(candidate);
  }
  return chosen;
}
