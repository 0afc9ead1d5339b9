import type { ToneSeries } from '../../tone/toneSeries.ts';
import { smoothedPower } from '../tonePower.ts';
import type { ToneView } from '../toneView.ts';
import type { TemplateMatch } from './matchedFilter.ts';
import type { PassageFeatures } from './passageFeatures.ts';

/** Statistic from which a match is a candidate. */
export const LEAST_STATISTIC = 5;
/** Statistic from which a match counts when the strongest of a recording is named. */
const SURE_STATISTIC = 15;
/** ln(1 + tone power / noise power) from which a fork stands beside a candidate. */
const STANDING_TONE = 1.5;
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
  readonly match: TemplateMatch;
  readonly features: PassageFeatures;
}

export interface JudgedCandidate extends Candidate {
  /** The network's output, 0..1. */
  readonly score: number;
}

/** What the strongest of a recording's sure candidates reached so far: what others are measured by. */
export interface Strongest {
  /** Peak power; 0 where there was none yet. */
  readonly peakPower: number;
  /** ln of the peak over the higher of both sides; 0 where there was none yet. */
  readonly rise: number;
}

export const NONE_YET: Strongest = { peakPower: 0, rise: 0 };

/** The strongest of all sure candidates. @param before  of those before these */
export function strongestOf(candidates: readonly Candidate[], before: Strongest): Strongest {
  let { peakPower, rise } = before;
  for (const { match, features } of candidates) {
    if (match.statistic < SURE_STATISTIC) continue;
    peakPower = Math.max(peakPower, features.peakPower);
    const { toneBefore, toneAfter } = features;
    if (Math.min(toneBefore, toneAfter) >= STANDING_TONE) rise = Math.max(rise, riseOf(features));
  }
  return { peakPower, rise };
}

/** ln of the peak over the higher of both sides. */
export const riseOf = ({ riseOverBefore, riseOverAfter }: PassageFeatures): number =>
  Math.min(riseOverBefore, riseOverAfter);

/** Does lost sound reach into the two half widths around a middle? Index into the series. */
export function touchesGap(series: ToneSeries, middle: number, halfWidthS: number): boolean {
  const reach = (2 * halfWidthS + 0.05) * series.rateHz;
  return series.hasGap(middle - reach, middle + reach);
}

/** What tells whether two peaks are one passage. */
export type Peak = Pick<PassageFeatures, 'peakIndex' | 'peakPower' | 'logHalfWidth'>;

/** Are two peaks the same passage: no clear dip of the level between them? Indices into the view. */
export function samePassage(view: ToneView, a: Peak, b: Peak): boolean {
  const from = Math.min(a.peakIndex, b.peakIndex);
  const to = Math.max(a.peakIndex, b.peakIndex);
  const apartS = (to - from) / view.rateHz;
  if (apartS < CLOSEST_S) return true;
  if (apartS > APART_S) return false;
  const narrowerS = Math.exp(Math.min(a.logHalfWidth, b.logHalfWidth));
  const half = Math.max(2, Math.min(15, Math.round(0.25 * narrowerS * view.rateHz)));
  let lowest = Infinity;
  for (let k = from; k <= to; k += 1) lowest = Math.min(lowest, smoothedPower(view, k, half));
  const isNear = apartS < REACH * Math.exp(Math.max(a.logHalfWidth, b.logHalfWidth));
  return lowest > (isNear ? DEEP_DIP : DIP) * Math.min(a.peakPower, b.peakPower);
}

/**
 * Of all candidates that are to be flagged the surest one of each passage.
 * @param flagged  indices are the view's
 * @returns the surest first
 */
export function onePerPassage(view: ToneView, flagged: readonly JudgedCandidate[]): JudgedCandidate[] {
  const chosen: JudgedCandidate[] = [];
  for (const candidate of [...flagged].sort((a, b) => b.score - a.score)) {
    const isNew = chosen.every((other) => !samePassage(view, other.features, candidate.features));
    if (isNew) chosen.push(candidate);
  }
  return chosen;
}
