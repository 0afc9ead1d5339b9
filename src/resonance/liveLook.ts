import { estimatePitch } from '../tone/pitchEstimate.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import { chooseEvents, findCandidates, judge, LEAST_STATISTIC, samePassage } from './passages.ts';
import type { JudgedCandidate } from './passages.ts';
import type { PassageRule } from './passageRule.ts';
import { AROUND_S, localMaxima, scanShape, upperQuartile } from './passageScan.ts';
import type { PassageFit } from './passageScan.ts';
import { passageBank } from './passageTemplates.ts';
import type { PassageTemplate } from './passageTemplates.ts';
import { LIVE_RULE } from './rules.ts';
import { touchesGap, typicalNoise } from './secondLook.ts';
import { coarsen, viewOf } from './toneView.ts';
import type { CoarseView, ToneView } from './toneView.ts';

/** Narrow values between two looks: 0.1 s. */
const STEP = 10;
const LOOKS_PER_S = 10;
/** The flank frame around a value is complete this many values later. */
export const LOOKAHEAD = 12;
/** How much of the past a look sees, s: the widest shape's window and a little. */
const PAST_S = 9;
/** The pitch is estimated anew this often, from this much of the past. */
const PITCH_EVERY = 5 * STEP;
const PITCH_PAST_S = 12;

/** How far past a shape's middle the live look waits before it decides, s: at most 1.4 s. */
export const liveAfterS = (halfWidthS: number): number => Math.min(1.4, 0.14 + 1.2 * halfWidthS);

/** How far past the middle the second, patient judgement of each shape waits, s. */
export const patientAfterS = (halfWidthS: number): number => Math.min(1.4, 0.3 + 2.5 * halfWidthS);

/** One live look: what is due to be judged at this moment. */
export interface LiveLook {
  readonly view: ToneView;
  readonly candidates: ReturnType<typeof findCandidates>;
}

/**
 * Looks at the newest part of a growing series again and again; every decision uses only what was there then.
 * The looks fall on fixed indices of the series, so the result does not depend on how the samples came in.
 */
export class LiveDetector {
  readonly #series: ToneSeries;
  readonly #rangeHz: number;
  readonly #rule: PassageRule;
  readonly #bank: readonly PassageTemplate[];
  #nextLook = STEP;
  #nextPitch = PITCH_EVERY;
  #offsetHz: number | null = null;
  #strongest: number | null = null;
  /** For each shape, the best statistic of each look, newest last: what hand and room reach by chance. */
  readonly #history = new Map<PassageTemplate, number[]>();
  /** Events flagged so far, with peaks as indices into the series. */
  readonly #flagged: { readonly index: number; readonly event: JudgedCandidate }[] = [];

  constructor(series: ToneSeries, rangeHz: number, rule: PassageRule = LIVE_RULE) {
    this.#series = series;
    this.#rangeHz = rangeHz;
    this.#rule = rule;
    this.#bank = [liveAfterS, patientAfterS].flatMap((afterS) => passageBank(series.rateHz, afterS));
  }

  /** The fork's offset as estimated so far, Hz; null before the first tone. */
  get offsetHz(): number | null {
    return this.#offsetHz;
  }

  /**
   * Judges all that has become due.
   * @param onLook  sees every look's candidates (the script that fits the rule)
   * @returns newly flagged events with the view they index and the series index at which each was decided
   */
  advance(
    onLook?: (look: LiveLook, strongest: number | null) => void,
  ): { event: JudgedCandidate; view: ToneView; decidedIndex: number }[] {
    const found: { event: JudgedCandidate; view: ToneView; decidedIndex: number }[] = [];
    const ready = this.#series.length - LOOKAHEAD;
    while (this.#nextLook <= ready) {
      const now = this.#nextLook;
      this.#nextLook += STEP;
      this.#trackPitch(now);
      if (this.#offsetHz === null) continue;
      for (const event of this.#look(now, this.#offsetHz, onLook))
        found.push({ ...event, decidedIndex: now });
    }
    return found;
  }

  #trackPitch(now: number): void {
    if (now < this.#nextPitch) return;
    this.#nextPitch += PITCH_EVERY;
    const { re, im, rateHz } = this.#series;
    const from = Math.max(0, now - Math.round(PITCH_PAST_S * rateHz));
    const estimate = estimatePitch(re, im, from, now, rateHz, this.#rangeHz, typicalNoise(this.#series, 150));
    if (estimate !== null && (this.#offsetHz === null || estimate.coherence > 0.3)) {
      this.#offsetHz = estimate.offsetHz;
    }
  }

  #look(
    now: number,
    offsetHz: number,
    onLook?: (look: LiveLook, strongest: number | null) => void,
  ): { event: JudgedCandidate; view: ToneView }[] {
    const series = this.#series;
    const from = Math.max(0, now - Math.round(PAST_S * series.rateHz));
    const view = viewOf(series, from, now, offsetHz);
    const candidates = findCandidates(view, this.#dueFits(view), true).filter(
      ({ fit }) => !touchesGap(series, fit.middle + from, fit.template.shape.halfWidthS),
    );
    for (const { fit, evidence } of candidates) {
      if (fit.statistic >= 15) this.#strongest = Math.max(this.#strongest ?? 0, evidence.peakPower);
    }
    onLook?.({ view, candidates }, this.#strongest);
    const events = chooseEvents(view, judge(candidates, this.#rule, this.#strongest), this.#rule.threshold);
    const fresh = events.filter((event) => !this.#flaggedBefore(event, view));
    for (const event of fresh) this.#flagged.push({ index: event.evidence.peakIndex + from, event });
    return fresh.map((event) => ({ event, view }));
  }

  /** Each shape is judged when its window has just filled: middles of the last step and a neighbour either side. */
  #dueFits(view: ToneView): PassageFit[] {
    const grids = new Map<number, CoarseView>();
    return this.#bank.flatMap((template) => {
      let grid = grids.get(template.step);
      if (grid === undefined) grids.set(template.step, (grid = coarsen(view, template.step)));
      const newest = grid.length - template.after;
      const scanned = scanShape(grid, template, newest - Math.ceil(STEP / template.step) - 2, newest);
      const history = this.#history.get(template) ?? [];
      this.#history.set(template, history);
      const own = Math.ceil((3 * template.shape.halfWidthS + 0.2) * LOOKS_PER_S);
      const maxima = localMaxima(scanned, LEAST_STATISTIC);
      const usual =
        maxima.length === 0 ? 0 : upperQuartile(history.slice(0, Math.max(0, history.length - own)));
      history.push(scanned.reduce((most, fit) => Math.max(most, fit.statistic), 0));
      if (history.length > own + AROUND_S * LOOKS_PER_S) history.shift();
      return maxima.map((i) => ({ ...(scanned[i] as PassageFit), usual }));
    });
  }

  #flaggedBefore(event: JudgedCandidate, view: ToneView): boolean {
    return this.#flagged.some((old) => {
      const peakIndex = old.index - view.firstIndex;
      if (peakIndex < 0) return false;
      return samePassage(view, { ...old.event.evidence, peakIndex }, event.evidence);
    });
  }
}
