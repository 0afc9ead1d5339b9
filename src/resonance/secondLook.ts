import type { FlankFrame } from '../tone/flankMeter.ts';
import { estimatePitch } from '../tone/pitchEstimate.ts';
import type { PitchEstimate } from '../tone/pitchEstimate.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import { candidateOf, chooseEvents, isSure, judge, LEAST_STATISTIC, strongestPower } from './passages.ts';
import type { Candidate, JudgedCandidate } from './passages.ts';
import type { PassageRule } from './passageRule.ts';
import { distinctPassages, scanPassages } from './passageScan.ts';
import type { PassageFit } from './passageScan.ts';
import { passageBank, ringUpsOfFastSlides } from './passageTemplates.ts';
import type { Sight } from './passageTemplates.ts';
import { SECOND_LOOK_RULE } from './rules.ts';
import { combinePitches, findSoundings, soundingPitch } from './soundings.ts';
import type { SoundingPitch, SoundingSpan } from './soundings.ts';
import { partOf, viewOf } from './toneView.ts';
import type { ToneView } from './toneView.ts';

/** What the live look flagged too needs no more than this probability: two looks that agree are surer than one. */
const AGREED_THRESHOLD = 0.35;
/** How close a candidate's peak must be to a live flag's to be the same, s. */
const AGREED_WITHIN_S = 0.15;

/** Stretches of a long series that are scanned at a time, s, and how much on either side is seen with them: all that a fit is compared with. */
const STRETCH_S = 120;
const BESIDE_S = 20;

/** Longest stretch for one estimate of the pitch, s. */
const LONGEST_ESTIMATE_S = 90;
/** Soundings shorter than this say nothing of the fork: a voice can hold a pitch as long. */
const PITCH_FROM_S = 2;
/** Where the tone holds one line of phase through the whole sound as no voice does, this much is enough. */
const CLEAR_PITCH_FROM_S = 1;
const CLEAR_COHERENCE = 0.7;

/** What a finished series shows. */
export interface SecondLook {
  /** The whole series in the frame that turns with the fork. */
  readonly view: ToneView;
  readonly events: readonly JudgedCandidate[];
  readonly soundings: readonly (SoundingSpan & { readonly pitch: SoundingPitch | null })[];
  /** Pitch of the fork over all soundings, relative to the frequency moved to 0 Hz; null: none heard. */
  readonly pitch: SoundingPitch | null;
}

/** The second look sees as far after a shape's middle as before it. */
const SIGHT: Sight = { afterS: (halfWidthS) => 4 * halfWidthS + 0.05, ringUpRates: ringUpsOfFastSlides };

/**
 * Looks at a finished series with time on both sides of everything.
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
  const view = viewOf(series, 0, series.length, rough?.offsetHz ?? 0);
  const soundings = findSoundings(view).map((span) => ({
    ...span,
    pitch: soundingPitch(series, span, rangeHz, noise),
  }));
  const fromS = (rough?.coherence ?? 0) > CLEAR_COHERENCE ? CLEAR_PITCH_FROM_S : PITCH_FROM_S;
  const pitch = combinePitches(
    soundings.flatMap((s) => (s.pitch !== null && s.to - s.from >= fromS * series.rateHz ? [s.pitch] : [])),
  );
  const fits = secondLookFits(series, view);
  const strongest = strongestPower(fits.filter(isSure).map((fit) => candidateOf(view, fit, false)));
  const agreed = (index: number): boolean =>
    liveTimesS.some((timeS) => Math.abs(timeS - index / series.rateHz) <= AGREED_WITHIN_S);
  // One by one, and only what passes is kept: an hour has 20 000 fits.
  const passed = fits.flatMap((fit) =>
    judge([candidateOf(view, fit, false)], rule, strongest).filter(
      ({ probability, evidence }) =>
        probability >= rule.threshold || (probability >= AGREED_THRESHOLD && agreed(evidence.peakIndex)),
    ),
  );
  return { view, soundings, pitch, events: chooseEvents(view, passed) };
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

/** All that may be a passage in a whole series, each with its evidence, lost sound left out. */
export const secondLookCandidates = (series: ToneSeries, view: ToneView): Candidate[] =>
  secondLookFits(series, view).map((fit) => candidateOf(view, fit, false));

/** All shapes that stand out, lost sound left out. A long series is scanned stretch by stretch, to bound the memory. */
function secondLookFits(series: ToneSeries, view: ToneView): PassageFit[] {
  const bank = passageBank(series.rateHz, SIGHT);
  const stretch = Math.round(STRETCH_S * view.rateHz);
  const beside = Math.round(BESIDE_S * view.rateHz);
  const fits: PassageFit[] = [];
  for (let from = 0; from < view.length; from += stretch) {
    const first = Math.max(0, from - beside);
    const part = partOf(view, first, Math.min(view.length, from + stretch + beside));
    for (const fit of distinctPassages(scanPassages(part, bank, LEAST_STATISTIC), view.rateHz)) {
      const middle = fit.middle + first;
      const isOwn = middle >= from && middle < from + stretch;
      if (isOwn && !touchesGap(series, middle, fit.template.shape.halfWidthS)) fits.push({ ...fit, middle });
    }
  }
  return fits;
}

/**
 * Median noise of one narrow value, mean square.
 * @param frames  how many of the newest flank frames count
 */
export function typicalNoise(series: ToneSeries, frames = Infinity): number {
  const from = Math.max(0, series.flanks.length - frames);
  const densities = new Float64Array(series.flanks.length - from);
  for (let i = 0; i < densities.length; i += 1) {
    densities[i] = (series.flanks[from + i] as FlankFrame).nearDensity;
  }
  densities.sort();
  return (densities[densities.length >> 1] ?? 0) * series.bandwidthHz;
}

/** Does lost sound reach into the two half widths around a middle? Index into the series. */
export function touchesGap(series: ToneSeries, middle: number, halfWidthS: number): boolean {
  const reach = (2 * halfWidthS + 0.05) * series.rateHz;
  return series.hasGap(middle - reach, middle + reach);
}
