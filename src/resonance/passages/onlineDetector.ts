import { estimatePitch } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import { CoarseGrid } from './decimatedView.ts';
import { blankEvidence } from './passageFeatures.ts';
import type { PassageEvidence } from './passageFeatures.ts';
import { chooseEvents, LEAST_STATISTIC, liveEvidence, noteStrongest, samePassage } from './candidates.ts';
import type { Candidate, JudgedCandidate } from './candidates.ts';
import { passageProbability } from './perceptron.ts';
import type { PassageRule, Strongest } from './perceptron.ts';
import { blankFit, fitPassage, keepDistinct, nextMaximum, scanTemplate } from './matchedFilter.ts';
import type { PassageFit, Reused, StatisticRow } from './matchedFilter.ts';
import { oneRingUp, passageBank, ringUpsOfFastSlides } from './passageTemplates.ts';
import type { PassageTemplate, Sight, SlideDirection } from './passageTemplates.ts';
import { RecentBest } from './cfarBackground.ts';
import { LIVE_RULE } from './perceptronWeights.ts';
import { touchesGap, typicalNoise } from './offlineDetector.ts';
import { seenPassage } from './detectedPassage.ts';
import type { SeenPassage } from './detectedPassage.ts';
import { MovingView } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/** Narrow values between two looks: 0.1 s. */
const STEP = 10;
const LOOKS_PER_S = 10;
/** How much of the past a look sees, s: the widest shape's window and a little. */
const PAST_S = 9;
/** The pitch is estimated anew this often, from this much of the past. */
const PITCH_EVERY = 5 * STEP;
const PITCH_PAST_S = 12;

/** How far past a shape's middle it is judged first, s: flagged then only where it is beyond doubt. */
const earlyAfterS = (halfWidthS: number): number => 0.14 + 1.2 * halfWidthS;
/** Half width from which the second judgement comes as soon, s. */
const JUDGED_EARLY_TO_S = 0.8;

/** How far past the middle it is judged again, with more to see, s. */
const patientAfterS = (halfWidthS: number): number => Math.min(1.1, 0.27 + 2.4 * halfWidthS);

/** And wide shapes once more: only its end tells a long maximum from what a hand does. */
const lateAfterS = (halfWidthS: number): number => Math.min(2.2, 0.05 + 4 * halfWidthS);
/** Half width from which this shows more than the second judgement, s. */
const JUDGED_LATE_FROM_S = 0.3;

const EARLY: Sight = {
  afterS: earlyAfterS,
  ringUpRates: (halfWidthS) => (halfWidthS > JUDGED_EARLY_TO_S ? [] : oneRingUp()),
};
const PATIENT: Sight = { afterS: patientAfterS, ringUpRates: ringUpsOfFastSlides };
const LATE: Sight = {
  afterS: lateAfterS,
  ringUpRates: (halfWidthS) => (halfWidthS < JUDGED_LATE_FROM_S ? [] : oneRingUp()),
};

const SIGHTS = [EARLY, PATIENT, LATE] as const;

/** Least probability for a flag at the first judgement; at the others the rule's own threshold counts. */
export const EARLY_THRESHOLD = 0.985;

/** Which of its judgements a window belongs to: 0 the first, 1 the second, 2 the late one of a wide shape. */
export function judgementOf({ after, step, shape }: PassageTemplate, rateHz: number): number {
  const seenS = (after * step) / rateHz;
  let judgement = 0;
  let leastOffS = Infinity;
  for (let i = 0; i < SIGHTS.length; i += 1) {
    const offS = Math.abs(SIGHTS[i].afterS(shape.halfWidthS) - seenS);
    if (offS >= leastOffS) continue;
    judgement = i;
    leastOffS = offS;
  }
  return judgement;
}

/** A newly flagged passage. */
export interface LiveFlag {
  readonly passage: SeenPassage;
  /** Index into the series at which it was decided. */
  readonly decidedIndex: number;
}

/** One template of the bank. */
interface Watched {
  readonly template: PassageTemplate;
  readonly row: StatisticRow;
  readonly ways: readonly WatchedWay[];
}

/** One direction of a template, with what it has reached lately. */
interface WatchedWay {
  readonly direction: SlideDirection;
  readonly statistics: Float64Array;
  readonly recent: RecentBest;
}

/** Templates that need the same grid. */
interface WatchedGrid {
  readonly grid: CoarseGrid;
  readonly templates: readonly Watched[];
  /** Cells of the longest window. */
  readonly longest: number;
}

/**
 * Looks at the newest part of a growing series again and again; every decision uses only what was there then.
 * The looks fall on fixed indices of the series, so the result does not depend on how the samples came in.
 */
export class LiveDetector {
  readonly #series: ToneSeries;
  readonly #rangeHz: number;
  readonly #rule: PassageRule;
  /** The bank, by the step of the grid that each template needs. */
  readonly #watched: readonly WatchedGrid[];
  readonly #view: MovingView;
  /** Values that the view shows. */
  readonly #past: number;
  #nextLook = STEP;
  #nextPitch = PITCH_EVERY;
  #offsetHz: number | null = null;
  readonly #strongest = { peakPower: 0 };
  /** Events flagged so far, with peaks as indices into the series. */
  readonly #flagged: { readonly index: number; readonly peakPower: number; readonly width: number }[] = [];
  /** Room for the fits and candidates of one look, filled anew by the next; and those of a look that are to be flagged. */
  readonly #fits: Reused<PassageFit>[] = [];
  readonly #candidates: {
    fit: PassageFit;
    readonly evidence: Reused<PassageEvidence>;
    probability: number;
  }[] = [];
  readonly #passed: JudgedCandidate[] = [];

  constructor(series: ToneSeries, rangeHz: number, rule: PassageRule = LIVE_RULE) {
    this.#series = series;
    this.#rangeHz = rangeHz;
    this.#rule = rule;
    this.#view = new MovingView(series);
    this.#past = Math.round(PAST_S * series.rateHz);
    const bank = SIGHTS.flatMap((sight) => passageBank(series.rateHz, sight));
    const steps = new Set(bank.map(({ step }) => step));
    this.#watched = [...steps].map((step) =>
      watchGrid(
        bank.filter((template) => template.step === step),
        step,
      ),
    );
  }

  /** The fork's offset as estimated so far, Hz; null before the first tone. */
  get offsetHz(): number | null {
    return this.#offsetHz;
  }

  /** The newest 9 s in the frame that turns with the fork, as of the last look. */
  get view(): ToneView {
    return this.#view;
  }

  /**
   * Judges all that has become due.
   * @param onFlag  called at once for each newly flagged passage
   * @param onLook  sees every look's candidates (the script that fits the rule)
   */
  advance(
    onFlag: (flag: LiveFlag) => void,
    onLook?: (candidates: readonly Candidate[], view: ToneView, strongest: Strongest) => void,
  ): void {
    while (this.#nextLook <= this.#series.length) {
      const now = this.#nextLook;
      this.#nextLook += STEP;
      this.#trackPitch(now);
      if (this.#offsetHz === null) continue;
      this.#view.show(Math.max(0, now - this.#past), now, this.#offsetHz);
      this.#look(now, onFlag, onLook);
    }
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
    onFlag: (flag: LiveFlag) => void,
    onLook?: (candidates: readonly Candidate[], view: ToneView, strongest: Strongest) => void,
  ): void {
    const view = this.#view;
    const count = this.#gatherCandidates(keepDistinct(this.#fits, this.#findDueFits(), view.rateHz));
    for (let i = 0; i < count; i += 1) {
      noteStrongest(this.#candidates[i], this.#strongest);
    }
    if (count > 0) onLook?.(this.#candidates.slice(0, count), view, this.#strongest);
    for (let i = 0; i < count; i += 1) {
      const candidate = this.#candidates[i] as Reused<JudgedCandidate>;
      candidate.probability = passageProbability(this.#rule, candidate.evidence, this.#strongest);
      if (this.#passes(candidate)) this.#passed.push(candidate);
    }
    if (this.#passed.length === 0) return;
    for (const event of chooseEvents(view, this.#passed)) {
      if (this.#flaggedBefore(event)) continue;
      const passage = seenPassage(event, view);
      const { peakIndex, peakPower, width } = event.evidence;
      this.#flagged.push({ index: peakIndex + view.firstIndex, peakPower, width });
      onFlag({ passage, decidedIndex: now });
    }
    this.#passed.length = 0;
  }

  #passes({ fit, probability }: JudgedCandidate): boolean {
    if (probability < this.#rule.threshold) return false;
    return probability >= EARLY_THRESHOLD || judgementOf(fit.template, this.#view.rateHz) > 0;
  }

  /** Evidence for the first fits, what lost sound reaches left out. @returns how many candidates there are */
  #gatherCandidates(fits: number): number {
    const view = this.#view;
    let count = 0;
    for (let i = 0; i < fits; i += 1) {
      const fit = this.#fits[i] as PassageFit;
      if (touchesGap(this.#series, fit.middle + view.firstIndex, fit.template.shape.halfWidthS)) continue;
      const room = (this.#candidates[count] ??= { fit, evidence: blankEvidence(), probability: NaN });
      room.fit = fit;
      liveEvidence(view, fit, room.evidence);
      count += 1;
    }
    return count;
  }

  /**
   * Each shape is judged when its window has just filled: middles of the last step and a neighbour either side.
   * @returns how many fits there are
   */
  #findDueFits(): number {
    const view = this.#view;
    let found = 0;
    for (const { grid, templates, longest } of this.#watched) {
      const count = middlesPerLook(grid.step);
      const all = grid.cellsIn(view);
      const cells = Math.min(all, longest + count);
      grid.fill(view, all - cells, cells);
      for (const { template, row, ways } of templates) {
        const newest = cells - template.after;
        const first = Math.max(template.before, newest - count);
        const due = Math.max(0, newest - first);
        scanTemplate(grid, template, first, due, row);
        for (const { direction, statistics, recent } of ways) {
          for (
            let at = nextMaximum(statistics, 0, due, LEAST_STATISTIC);
            at >= 0;
            at = nextMaximum(statistics, at + 1, due, LEAST_STATISTIC)
          ) {
            const room = (this.#fits[found] ??= blankFit(template));
            recent.findUsual();
            room.usual = recent.usual;
            fitPassage(grid, template, direction, first + at, room);
            found += 1;
          }
          recent.push(statistics, due);
        }
      }
    }
    return found;
  }

  #flaggedBefore(event: JudgedCandidate): boolean {
    const view = this.#view;
    for (const { index, peakPower, width } of this.#flagged) {
      const peakIndex = index - view.firstIndex;
      if (peakIndex >= 0 && samePassage(view, { peakIndex, peakPower, width }, event.evidence)) return true;
    }
    return false;
  }
}

/** Cells that a look's middles span: those of one step and a neighbour either side. */
const middlesPerLook = (step: number): number => Math.ceil(STEP / step) + 2;

function watchGrid(bank: readonly PassageTemplate[], step: number): WatchedGrid {
  return {
    grid: new CoarseGrid(step),
    templates: bank.map(watch),
    longest: Math.max(...bank.map((template) => template.re.length)),
  };
}

function watch(template: PassageTemplate): Watched {
  const count = middlesPerLook(template.step);
  const row = { longer: new Float64Array(count), shorter: new Float64Array(count) };
  const own = Math.ceil((3 * template.shape.halfWidthS + 0.2) * LOOKS_PER_S);
  const way = (direction: SlideDirection, statistics: Float64Array): WatchedWay => ({
    direction,
    statistics,
    recent: new RecentBest(own, LOOKS_PER_S),
  });
  return { template, row, ways: [way(1, row.longer), way(-1, row.shorter)] };
}
