import { FrequencyEstimator } from '../../tone/frequencyEstimator.ts';
import type { FrequencyEstimate } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { medianNoise } from '../noiseFloor.ts';
import { FREQUENCY_FROM_S } from '../frequencyFrom.ts';
import { seriesSoundings } from '../seriesSoundings.ts';
import { combineFrequencies, soundingFrequency } from '../soundingFrequency.ts';
import type { ForkFrequency } from '../soundingFrequency.ts';
import type { SoundingSpan } from '../soundings.ts';
import { MovingView } from '../toneView.ts';
import { APART_S, NONE_YET, onePerPassage, strongestOf } from './candidates.ts';
import type { Candidate, JudgedCandidate } from './candidates.ts';
import { detectedPassage } from './detectedPassage.ts';
import type { DetectedPassage } from './detectedPassage.ts';
import { BESIDE_S, offlineCandidates } from './offlineCandidates.ts';
import { jointScore, OnlineScores } from './onlineScores.ts';
import { passageScore, scoreAtMost } from './passageProbability.ts';
import type { PassageClassifier } from './passageProbability.ts';
import { OFFLINE_CLASSIFIER } from './perceptronWeights.ts';

/** Longest stretch for one estimate of the frequency, s. */
const LONGEST_ESTIMATE_S = 90;
/** Where the tone holds one line of phase through the whole sound as no voice does, this much is enough. */
const CLEAR_FREQUENCY_FROM_S = 1;
const CLEAR_COHERENCE = 0.7;

/** What a finished series shows. */
export interface OfflineDetection {
  /** The fork's frequency less the one moved to 0 Hz, rough: what the series was turned back by; 0 where none is heard. */
  readonly offsetHz: number;
  readonly passages: readonly DetectedPassage[];
  readonly soundings: readonly (SoundingSpan & { readonly frequency: ForkFrequency | null })[];
  /** The fork's frequency over all soundings, relative to the one moved to 0 Hz; null: none heard. */
  readonly frequency: ForkFrequency | null;
}

/**
 * Detects passages in a finished series, with time on both sides of everything, stretch by stretch: beside the series
 * itself the memory grows only with what may be a passage.
 * @param rangeHz  how far the fork may be off the frequency moved to 0 Hz
 * @param online  what the online detector thought of the same series
 */
export function detectOffline(
  series: ToneSeries,
  rangeHz: number,
  online = new OnlineScores(),
  classifier: PassageClassifier = OFFLINE_CLASSIFIER,
): OfflineDetection {
  const noise = medianNoise(series);
  const estimator = new FrequencyEstimator(rangeHz);
  const rough = roughFrequency(series, estimator, noise);
  const offsetHz = rough?.offsetHz ?? 0;
  const view = new MovingView(series);
  const soundings = seriesSoundings(view, offsetHz).map((span) => ({
    ...span,
    frequency: soundingFrequency(series, span, estimator, noise),
  }));
  const fromS = (rough?.coherence ?? 0) > CLEAR_COHERENCE ? CLEAR_FREQUENCY_FROM_S : FREQUENCY_FROM_S;
  const frequency = combineFrequencies(
    soundings.flatMap(({ from, to, frequency: own }) =>
      own !== null && to - from >= fromS * series.rateHz ? [own] : [],
    ),
  );
  const passed = judgedCandidates(offlineCandidates(view, offsetHz), online, classifier).filter(
    ({ score }) => score >= classifier.threshold,
  );
  return { offsetHz, soundings, frequency, passages: passagesOf(view, offsetHz, passed, classifier) };
}

/**
 * Candidates with their output beside the strongest of all. Only those are kept meanwhile that could still be
 * flagged, however strong the strongest turns out to be.
 */
function judgedCandidates(
  candidates: Iterable<Candidate>,
  online: OnlineScores,
  classifier: PassageClassifier,
): JudgedCandidate[] {
  const joint = (offline: number, { features }: Candidate): number =>
    jointScore(offline, online.near(features.peakIndex));
  const hopeful: Candidate[] = [];
  let strongest = NONE_YET;
  for (const candidate of candidates) {
    strongest = strongestOf([candidate], strongest);
    const most = scoreAtMost(classifier, candidate.features, strongest);
    if (joint(most, candidate) >= classifier.threshold) hopeful.push(candidate);
  }
  return hopeful.map((candidate) => ({
    ...candidate,
    score: joint(passageScore(classifier, candidate.features, strongest), candidate),
  }));
}

/** One for each passage, in order of time. @param view  of the series; is moved along it */
function passagesOf(
  view: MovingView,
  offsetHz: number,
  passed: readonly JudgedCandidate[],
  classifier: PassageClassifier,
): DetectedPassage[] {
  const { series, rateHz } = view;
  const beside = Math.round(BESIDE_S * rateHz);
  return inClusters(passed, APART_S * rateHz)
    .flatMap((cluster) => {
      const first = Math.max(0, cluster[0].features.peakIndex - beside);
      const last = cluster[cluster.length - 1].features.peakIndex + beside;
      view.show(first, Math.min(series.length, last), offsetHz);
      const own = cluster.map((candidate) => ({ ...candidate, ...moved(candidate, -first) }));
      return onePerPassage(view, own).map((candidate) => detectedPassage(candidate, classifier, 0, view));
    })
    .sort((a, b) => a.timeS - b.timeS);
}

/** A candidate with indices that are so much higher. */
const moved = ({ match, features }: Candidate, by: number): Candidate => ({
  match: { ...match, middle: match.middle + by },
  features: { ...features, peakIndex: features.peakIndex + by, middle: features.middle + by },
});

/** In order of time, cut wherever nothing peaks for so many values; no cluster is empty. */
function inClusters(candidates: readonly JudgedCandidate[], apart: number): JudgedCandidate[][] {
  const clusters: JudgedCandidate[][] = [];
  let last = -Infinity;
  for (const candidate of [...candidates].sort((a, b) => a.features.peakIndex - b.features.peakIndex)) {
    const { peakIndex } = candidate.features;
    if (peakIndex - last > apart) clusters.push([]);
    clusters.at(-1)?.push(candidate);
    last = peakIndex;
  }
  return clusters;
}

/**
 * Frequency over the whole series; of a long one that of its most coherent stretch of up to 90 s, since the cost of one
 * estimate grows with the square of its length.
 */
function roughFrequency(
  series: ToneSeries,
  estimator: FrequencyEstimator,
  noise: number,
): FrequencyEstimate | null {
  const { length, rateHz } = series;
  const parts = Math.ceil(length / (LONGEST_ESTIMATE_S * rateHz));
  let best: FrequencyEstimate | null = null;
  for (let part = 0; part < parts; part += 1) {
    const from = Math.round((part * length) / parts);
    const to = Math.round(((part + 1) * length) / parts);
    const estimate = estimator.estimate(series.segment(from, to), noise);
    if (estimate !== null && estimate.coherence > (best?.coherence ?? -1)) best = estimate;
  }
  return best;
}
