import { estimatePitch } from '../../tone/frequencyEstimator.ts';
import type { PitchEstimate } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { blankEvidence, gatherEvidence } from './passageFeatures.ts';
import { APART_S, chooseEvents, LEAST_STATISTIC, noteStrongest } from './candidates.ts';
import type { Candidate, JudgedCandidate } from './candidates.ts';
import { passageProbability, probabilityAtMost } from './perceptron.ts';
import type { PassageRule } from './perceptron.ts';
import { keepDistinct, scanPassages } from './matchedFilter.ts';
import type { PassageFit, Reused } from './matchedFilter.ts';
import { passageBank, ringUpsOfFastSlides } from './passageTemplates.ts';
import type { Sight } from './passageTemplates.ts';
import { SECOND_LOOK_RULE } from './perceptronWeights.ts';
import { seenPassage } from './detectedPassage.ts';
import type { SeenPassage } from './detectedPassage.ts';
import { allSoundings, combinePitches, soundingPitch } from '../soundings.ts';
import type { SoundingPitch, SoundingSpan } from '../soundings.ts';
import { sharedView } from '../toneView.ts';

/** What the live look flagged too needs no more than this probability: two looks that agree are surer than one. */
const AGREED_THRESHOLD = 0.35;
/** How close a candidate's peak must be to a live flag's to be the same, s. */
const AGREED_WITHIN_S = 0.15;

/** Stretches of a long series that are scanned at a time, s, and how much on either side is seen with them: all that a fit is compared with. */
const STRETCH_S = 120;
const BESIDE_S = 20;

/** Longest stretch for one estimate of the pitch, s. */
const LONGEST_ESTIMATE_S = 90;
/** Soundings shorter than this, s, say nothing of the fork: a voice can hold a pitch as long. */
export const PITCH_FROM_S = 2;
/** Where the tone holds one line of phase through the whole sound as no voice does, this much is enough. */
const CLEAR_PITCH_FROM_S = 1;
const CLEAR_COHERENCE = 0.7;

/** What a finished series shows. */
export interface SecondLook {
  /** The fork's pitch less the frequency moved to 0 Hz, rough: what the series was turned back by; 0 where none is heard. */
  readonly offsetHz: number;
  readonly passages: readonly SeenPassage[];
  readonly soundings: readonly (SoundingSpan & { readonly pitch: SoundingPitch | null })[];
  /** Pitch of the fork over all soundings, relative to the frequency moved to 0 Hz; null: none heard. */
  readonly pitch: SoundingPitch | null;
}

/** The second look sees as far after a shape's middle as before it. */
const SIGHT: Sight = { afterS: (halfWidthS) => 4 * halfWidthS + 0.05, ringUpRates: ringUpsOfFastSlides };

/**
 * Looks at a finished series with time on both sides of everything, stretch by stretch: beside the series itself the
 * memory grows only with what may be a passage.
 * @param rangeHz  how far the fork may be off the frequency moved to 0 Hz
 * @param liveTimesS  when the levels peaked of what the live look flagged
 */
export function secondLook(
  series: ToneSeries,
  rangeHz: number,
  liveTimesS: readonly number[] = [],
  rule: PassageRule = SECOND_LOOK_RULE,
): SecondLook {
  const noise = typicalNoise(series);
  const rough = roughPitch(series, rangeHz, noise);
  const offsetHz = rough?.offsetHz ?? 0;
  const soundings = allSoundings(series, offsetHz).map((span) => ({
    ...span,
    pitch: soundingPitch(series, span, rangeHz, noise),
  }));
  const fromS = (rough?.coherence ?? 0) > CLEAR_COHERENCE ? CLEAR_PITCH_FROM_S : PITCH_FROM_S;
  const pitch = combinePitches(
    soundings.flatMap((s) => (s.pitch !== null && s.to - s.from >= fromS * series.rateHz ? [s.pitch] : [])),
  );
  const agreed = (index: number): boolean =>
    liveTimesS.some((timeS) => Math.abs(timeS - index / series.rateHz) <= AGREED_WITHIN_S);
  const hopeful: Candidate[] = [];
  const strongest = { peakPower: 0 };
  for (const candidate of secondLookCandidates(series, offsetHz)) {
    noteStrongest(candidate, strongest);
    const most = probabilityAtMost(rule, candidate.evidence, strongest);
    if (most >= AGREED_THRESHOLD) hopeful.push(moved(candidate, 0));
  }
  const passed = hopeful
    .map((candidate) => ({
      ...candidate,
      probability: passageProbability(rule, candidate.evidence, strongest),
    }))
    .filter(
      ({ probability, evidence }) =>
        probability >= rule.threshold || (probability >= AGREED_THRESHOLD && agreed(evidence.peakIndex)),
    );
  return { offsetHz, soundings, pitch, passages: passagesOf(series, offsetHz, passed) };
}

/** A copy of a candidate with indices that are so much higher. */
const moved = ({ fit, evidence }: Candidate, by: number): Candidate => ({
  fit: { ...fit, middle: fit.middle + by },
  evidence: { ...evidence, peakIndex: evidence.peakIndex + by, middle: evidence.middle + by },
});

/** One for each passage, in order of time. */
function passagesOf(series: ToneSeries, offsetHz: number, passed: readonly JudgedCandidate[]): SeenPassage[] {
  const beside = Math.round(BESIDE_S * series.rateHz);
  const view = sharedView(series);
  return inClusters(passed, APART_S * series.rateHz)
    .flatMap((cluster) => {
      const first = Math.max(0, cluster[0].evidence.peakIndex - beside);
      const last = (cluster.at(-1) as JudgedCandidate).evidence.peakIndex + beside;
      view.show(first, Math.min(series.length, last), offsetHz);
      const own = cluster.map((candidate) => ({ ...candidate, ...moved(candidate, -first) }));
      return chooseEvents(view, own).map((event) => seenPassage(event, view));
    })
    .sort((a, b) => a.timeS - b.timeS);
}

/** In order of time, cut wherever nothing peaks for so many values. */
function inClusters(candidates: readonly JudgedCandidate[], apart: number): JudgedCandidate[][] {
  const clusters: JudgedCandidate[][] = [];
  let last = -Infinity;
  for (const candidate of [...candidates].sort((a, b) => a.evidence.peakIndex - b.evidence.peakIndex)) {
    const { peakIndex } = candidate.evidence;
    if (peakIndex - last > apart) clusters.push([]);
    clusters.at(-1)?.push(candidate);
    last = peakIndex;
  }
  return clusters;
}

/**
 * Pitch over the whole series; of a long one that of its most coherent stretch of up to 90 s, since the cost of one estimate grows with the
 * square of its length.
 */
function roughPitch(series: ToneSeries, rangeHz: number, noise: number): PitchEstimate | null {
  const { re, im, length, rateHz } = series;
  const parts = Math.ceil(length / (LONGEST_ESTIMATE_S * rateHz));
  let best: PitchEstimate | null = null;
  for (let part = 0; part < parts; part += 1) {
    const from = Math.round((part * length) / parts);
    const to = Math.round(((part + 1) * length) / parts);
    const estimate = estimatePitch(re, im, from, to, rateHz, rangeHz, noise);
    if (estimate !== null && estimate.coherence > (best?.coherence ?? -1)) best = estimate;
  }
  return best;
}

/**
 * All that may be a passage in a whole series, each with its evidence, lost sound left out; stretch by stretch. Indices
 * are the series'. Each is good until the next is asked for: what is to last must be copied.
 */
export function* secondLookCandidates(series: ToneSeries, offsetHz: number): Generator<Candidate> {
  const { rateHz } = series;
  const bank = passageBank(rateHz, SIGHT);
  const stretch = Math.round(STRETCH_S * rateHz);
  const beside = Math.round(BESIDE_S * rateHz);
  const view = sharedView(series);
  const fits: Reused<PassageFit>[] = [];
  const evidence = blankEvidence();
  for (let from = 0; from < series.length; from += stretch) {
    const firstIndex = Math.max(0, from - beside);
    view.show(firstIndex, Math.min(series.length, from + stretch + beside), offsetHz);
    const count = keepDistinct(fits, scanPassages(view, bank, LEAST_STATISTIC, fits), rateHz);
    for (let i = 0; i < count; i += 1) {
      const fit = fits[i];
      const middle = fit.middle + firstIndex;
      const isOwn = middle >= from && middle < from + stretch;
      if (!isOwn || touchesGap(series, middle, fit.template.shape.halfWidthS)) continue;
      gatherEvidence(view, fit, view.length - 1, evidence);
      fit.middle = middle;
      evidence.middle = middle;
      evidence.peakIndex += firstIndex;
      yield { fit, evidence };
    }
  }
}

/** Room to work in, kept from one call to the next. */
let densities = new Float64Array(256);

/**
 * Median noise of one narrow value, mean square.
 * @param frames  how many of the newest flank frames count
 */
export function typicalNoise(series: ToneSeries, frames = Infinity): number {
  const { flanks } = series;
  const count = Math.min(frames, flanks.length);
  if (count === 0) return 0;
  if (densities.length < count) densities = new Float64Array(2 * count);
  for (let i = 0; i < count; i += 1) densities[i] = flanks.near[flanks.length - count + i];
  // What doesn't count stands last.
  densities.fill(Infinity, count).sort();
  return densities[count >> 1] * series.bandwidthHz;
}

/** Does lost sound reach into the two half widths around a middle? Index into the series. */
export function touchesGap(series: ToneSeries, middle: number, halfWidthS: number): boolean {
  const reach = (2 * halfWidthS + 0.05) * series.rateHz;
  return series.hasGap(middle - reach, middle + reach);
}
