import { FrequencyEstimator } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { medianNoise } from '../noiseFloor.ts';
import { MovingView } from '../toneView.ts';
import { NONE_YET, onePerPassage, samePassage, strongestOf, touchesGap } from './candidates.ts';
import type { Candidate, JudgedCandidate, Peak, Strongest } from './candidates.ts';
import { detectedPassage } from './detectedPassage.ts';
import type { DetectedPassage } from './detectedPassage.ts';
import { EARLY_THRESHOLD, judgementOf } from './lookAheads.ts';
import { suppressNonMaxima } from './matchedFilter.ts';
import type { TemplateMatch } from './matchedFilter.ts';
import { OnlineFilter, STEP } from './onlineFilter.ts';
import { OnlineScores } from './onlineScores.ts';
import { certaintyOf, passageScore } from './passageProbability.ts';
import type { Certainty, PassageClassifier } from './passageProbability.ts';
import { passageFeatures } from './passageFeatures.ts';
import { ONLINE_CLASSIFIER } from './perceptronWeights.ts';

/** How much of the past is in view, s: the widest shape's window and a little. */
const PAST_S = 9;
/** The frequency is estimated anew after so many values, from this much of the past. */
const FREQUENCY_EVERY = 5 * STEP;
const FREQUENCY_PAST_S = 12;
/** Side-band frames that tell the noise for it: 12 s. */
const NOISE_FRAMES = 150;
/** From this coherence on an estimate takes the place of the one before. */
const COHERENT = 0.3;

/** What was flagged, with how sure it was. */
interface FlaggedPeak extends Peak {
  readonly certainty: Certainty;
}

/** A newly flagged passage. One that was flagged as a maybe comes again when it is sure. */
export interface OnlineFlag {
  readonly passage: DetectedPassage;
  /** When the level peaked of the maybe that it takes the place of, s; null: it is new. */
  readonly maybeS: number | null;
  /** Index into the series at which it was decided. */
  readonly decidedIndex: number;
}

/** What one step had to judge: for the script that trains the classifier. */
export type SeeCandidates = (
  candidates: readonly Candidate[],
  view: MovingView,
  strongest: Strongest,
) => void;

/**
 * Detects passages while a series grows, 0.1 s at a time; every decision uses only what was there then. The steps fall
 * on fixed indices of the series, so the result does not depend on how the samples came in.
 */
export class OnlineDetector {
  /** What was thought of each peak, flagged or not: for the second look. */
  readonly scores = new OnlineScores();
  private readonly series: ToneSeries;
  private readonly classifier: PassageClassifier;
  private readonly filter: OnlineFilter;
  private readonly tunedView: MovingView;
  /** Values that the view shows. */
  private readonly past: number;
  private readonly estimator: FrequencyEstimator;
  private nextStep = STEP;
  private nextFrequency = FREQUENCY_EVERY;
  private tunedOffsetHz: number | null = null;
  private strongest = NONE_YET;
  /** Passages flagged so far, with peaks as indices into the series. */
  private readonly flagged: FlaggedPeak[] = [];

  /** @param rangeHz  how far the fork may be off the frequency moved to 0 Hz */
  constructor(series: ToneSeries, rangeHz: number, classifier: PassageClassifier = ONLINE_CLASSIFIER) {
    this.series = series;
    this.classifier = classifier;
    this.filter = new OnlineFilter(series.rateHz);
    this.tunedView = new MovingView(series);
    this.past = Math.round(PAST_S * series.rateHz);
    this.estimator = new FrequencyEstimator(rangeHz);
  }

  /** The fork's offset as estimated so far, Hz; null before the first tone. */
  get offsetHz(): number | null {
    return this.tunedOffsetHz;
  }

  /** The newest 9 s in the frame that turns with the fork, as of the last step; it moves with each. */
  get view(): MovingView {
    return this.tunedView;
  }

  /** Judges all that has become due. @returns the newly flagged passages */
  advance(seeCandidates?: SeeCandidates): readonly OnlineFlag[] {
    const flags: OnlineFlag[] = [];
    for (; this.nextStep <= this.series.length; this.nextStep += STEP) {
      const now = this.nextStep;
      this.trackFrequency(now);
      if (this.tunedOffsetHz === null) continue;
      this.tunedView.show(Math.max(0, now - this.past), now, this.tunedOffsetHz);
      for (const flag of this.step(seeCandidates)) flags.push({ ...flag, decidedIndex: now });
    }
    return flags;
  }

  private trackFrequency(now: number): void {
    if (now < this.nextFrequency) return;
    this.nextFrequency += FREQUENCY_EVERY;
    const from = Math.max(0, now - Math.round(FREQUENCY_PAST_S * this.series.rateHz));
    const noise = medianNoise(this.series, NOISE_FRAMES);
    const estimate = this.estimator.estimate(this.series.segment(from, now), noise);
    if (estimate !== null && (this.tunedOffsetHz === null || estimate.coherence > COHERENT)) {
      this.tunedOffsetHz = estimate.offsetHz;
    }
  }

  private step(seeCandidates?: SeeCandidates): Omit<OnlineFlag, 'decidedIndex'>[] {
    const view = this.tunedView;
    const candidates = suppressNonMaxima(this.filter.push(view), view.rateHz)
      .filter(({ middle, template }) => {
        return !touchesGap(this.series, middle + view.firstIndex, template.shape.halfWidthS);
      })
      .map((match) => ({ match, features: this.featuresOf(match) }));
    if (candidates.length === 0) return [];
    this.strongest = strongestOf(candidates, this.strongest);
    seeCandidates?.(candidates, view, this.strongest);
    const judged = candidates.map((candidate) => ({
      ...candidate,
      score: passageScore(this.classifier, candidate.features, this.strongest),
    }));
    for (const { features, score } of judged) this.scores.add(features.peakIndex + view.firstIndex, score);
    const passed = judged.filter((candidate) => this.passes(candidate));
    const flags: Omit<OnlineFlag, 'decidedIndex'>[] = [];
    for (const candidate of onePerPassage(view, passed)) {
      const certainty = certaintyOf(this.classifier, candidate.score);
      const before = this.flaggedAlready(candidate);
      if (before.some((flag) => flag.certainty === 'sure' || certainty === 'maybe')) continue;
      const { peakIndex, peakPower, logHalfWidth } = candidate.features;
      this.flagged.push({ peakIndex: peakIndex + view.firstIndex, peakPower, logHalfWidth, certainty });
      const judgement = judgementOf(candidate.match.template, view.rateHz);
      const passage = detectedPassage(candidate, this.classifier, judgement, view);
      const maybe = before.at(0);
      flags.push({ passage, maybeS: maybe === undefined ? null : maybe.peakIndex / view.rateHz });
    }
    return flags;
  }

  /** From no more than the match's own window after its middle, however long ago that was. */
  private featuresOf(match: TemplateMatch) {
    const { after, step } = match.template;
    const lastIndex = Math.round(match.middle + after * step);
    return passageFeatures(this.tunedView, match, Math.min(this.tunedView.length - 1, lastIndex));
  }

  private passes({ match, score }: JudgedCandidate): boolean {
    if (score < this.classifier.threshold) return false;
    return score >= EARLY_THRESHOLD || judgementOf(match.template, this.tunedView.rateHz) > 0;
  }

  /** Flags of the same passage. */
  private flaggedAlready({ features }: JudgedCandidate): readonly FlaggedPeak[] {
    const view = this.tunedView;
    return this.flagged.filter((flagged) => {
      const own = { ...flagged, peakIndex: flagged.peakIndex - view.firstIndex };
      return own.peakIndex >= 0 && samePassage(view, own, features);
    });
  }
}
