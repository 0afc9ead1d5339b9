import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { ColumnGuess } from './columnGuess.ts';
import { HAND } from './handModel.ts';
import { fitPass, shareAt } from './passFit.ts';
import type { FittedPass, PassValues, SteadyPass } from './passFit.ts';
import { PlaceMixture } from './placeMixture.ts';
import { CROSSING, LEVEL, PlaceState, Q, SHARE, SLOPE, UNREST, V, X } from './placeState.ts';
import { ToneBlock } from './toneBlock.ts';

/** Values in a block while the pass goes on, and before it. */
const BLOCK = 2;
const BLOCK_BEFORE = 10;
/** The pass is followed freely from so many half widths before its middle on. */
const FREE_FROM = 5;
/** Before that the tone teaches level, dying and frequency for at most so long, s. */
const BEFORE_S = 2.5;
/** Where the column may have rested before the slide, half widths from resonance. */
const RESTS = [7, 12, 25] as const;
/** Other slides than the one that fits best: centre (half widths), ln of the width, and their weight. */
const BRANCHES = [
  [0, 0, 1],
  [-0.5, 0, 0.3],
  [0.5, 0, 0.3],
  [0, -0.35, 0.3],
  [0, 0.35, 0.3],
] as const;
/** Uncertainty of each: centre (half widths), ln of the width, the column's part (relative and absolute). */
const CENTRE_U = 0.55;
const WIDTH_U = 0.6;
const SHARE_U = 0.2;
const SHARE_LEAST_U = 0.1;
/** Uncertainty of the level before anything is heard. */
const LEVEL_U = 0.5;
const MOST_STATES = 16;
/** What a hand that isn't steady does to such a middle, half widths (on two simulated worlds). */
const STEADY_U = 0.3;
/** A crossing that later sound moves further than this, s, is none; and so many of the states must have seen one. */
const FARTHEST_S = 0.5;
const LEAST_SEEN = 0.5;

/** A fork of which only the frequency is known, to some hundredths of a hertz: it dies in 5 to 40 s. */
const DYING_PER_S = -0.08;
const DYING_U_PER_S = 0.1;
const TURN_U_RAD_PER_S = 0.4;

export interface PassOrder {
  readonly series: ToneSeries;
  /** What the frame turns by, Hz beside the frequency moved to 0 Hz. */
  readonly offsetHz: number;
  /** First value of the sounding that counts. */
  readonly fromIndex: number;
  /** One past the last value that there is. */
  readonly untilIndex: number;
  /** As the detector saw it. */
  readonly pass: SteadyPass;
}

/** The moment in which the length was right. */
export interface CentreMoment {
  readonly timeS: number;
  readonly standardUncertaintyS: number;
  /** The same in half widths of the column's length. */
  readonly standardUncertaintyHalfWidths: number;
  /** The column's part over the fork's direct sound at resonance, m e^{iθ} / d. */
  readonly shareRe: number;
  readonly shareIm: number;
}

/** A pass as one guess about the column has it. */
export interface PassRun {
  readonly guess: ColumnGuess;
  /** Where the column is in the end. */
  readonly mixture: PlaceMixture;
  /** First value that wasn't used. */
  readonly nextIndex: number;
  /** ln of how probable the sound is under this guess, up to a constant that all guesses share. */
  readonly logEvidence: number;
  readonly centre: CentreMoment;
}

/** How much the evidence for one guess over another counts: no model is right to the last decimal. */
const TEMPER = 0.3;

/** ln of how far one guess is preferred to another by what was heard, with what was known before. */
export const logWeight = ({ weight }: ColumnGuess, logEvidence: number): number =>
  Math.log(weight) + TEMPER * logEvidence;

/** Follows a pass from before it to the newest value, once for each guess. */
export function runPass(order: PassOrder, guesses: readonly ColumnGuess[]): PassRun[] {
  const values = readValues(order);
  return guesses.map((guess) => runOne(order, values, guess));
}

/** Which of them explains best what was heard. @param runs  not empty */
export function likeliestPass(runs: readonly PassRun[]): PassRun {
  const logs = runs.map(({ guess, logEvidence }) => logWeight(guess, logEvidence));
  return runs[logs.indexOf(Math.max(...logs))];
}

/** Index of the first value from which on the pass is followed freely. */
const freeIndex = ({ series, fromIndex, pass }: PassOrder): number =>
  Math.max(fromIndex, Math.round((pass.centreS - FREE_FROM * pass.halfWidthS) * series.rateHz));

function readValues(order: PassOrder): PassValues {
  const { series, offsetHz, untilIndex } = order;
  const { rateHz } = series;
  const start = freeIndex(order);
  const count = Math.max(0, Math.floor((untilIndex - start) / BLOCK));
  const values = {
    timesS: new Float64Array(count),
    re: new Float64Array(count),
    im: new Float64Array(count),
  };
  const block = new ToneBlock(series);
  for (let b = 0; b < count; b += 1) {
    block.read(start + b * BLOCK, BLOCK, offsetHz);
    values.timesS[b] = (start + (b + 0.5) * BLOCK - 0.5) / rateHz;
    values.re[b] = block.re;
    values.im[b] = block.im;
  }
  return values;
}

function runOne(order: PassOrder, values: PassValues, guess: ColumnGuess): PassRun {
  const { series, offsetHz, fromIndex, untilIndex, pass } = order;
  const { rateHz } = series;
  const start = freeIndex(order);
  const mixture = new PlaceMixture(MOST_STATES);
  const fitted = fitPass(values, pass, guess.ringUpS);
  const slides = slidesAround(values, fitted, guess.ringUpS);
  const block = new ToneBlock(series);
  const countBefore = Math.min(
    Math.round((BEFORE_S * rateHz) / BLOCK_BEFORE),
    Math.floor((start - fromIndex) / BLOCK_BEFORE),
  );
  const first = start - countBefore * BLOCK_BEFORE;
  block.read(first, countBefore > 0 ? BLOCK_BEFORE : BLOCK, offsetHz);
  const middleS = (from: number, count: number): number => (from + (count - 1) / 2) / rateHz;
  const freeS = middleS(start, BLOCK);
  const rests = countBefore > 0 ? RESTS : [Infinity];
  const paths: { readonly slide: Slide; readonly rest: number }[] = [];
  for (const slide of slides) {
    for (const rest of rests) {
      const state = mixture.add();
      beginState(state, guess, slide);
      state.weight = slide.weight / rests.length;
      placeAlong(state, slide, rest, countBefore > 0 ? middleS(first, BLOCK_BEFORE) : freeS);
      beginLevel(state, block);
      paths.push({ slide, rest });
    }
  }
  for (let b = 0; b < countBefore; b += 1) {
    const from = first + b * BLOCK_BEFORE;
    block.read(from, BLOCK_BEFORE, offsetHz);
    const timeS = middleS(from, BLOCK_BEFORE);
    mixture.stepAlong(BLOCK_BEFORE / rateHz, block, (state, index) => {
      const { slide, rest } = paths[index];
      placeAlong(state, slide, rest, timeS);
    });
  }
  for (const [index, state] of mixture.states.entries()) {
    freeState(state, paths[index].slide, freeS);
  }
  let next = start;
  for (; next + BLOCK <= untilIndex; next += BLOCK) {
    block.read(next, BLOCK, offsetHz);
    mixture.step(BLOCK / rateHz, middleS(next, BLOCK), block);
  }
  return {
    guess,
    mixture,
    nextIndex: next,
    logEvidence: mixture.logEvidence,
    centre: centreOf(mixture) ?? steadyCentre(fitted),
  };
}

interface Slide extends FittedPass {
  readonly weight: number;
  readonly shareStandardUncertainty: number;
}

/** Slides that may have been: as fitted and beside it. */
function slidesAround(values: PassValues, fitted: FittedPass, ringUpS: number): readonly Slide[] {
  return BRANCHES.map(([off, widen, weight]) => {
    const beside = {
      centreS: fitted.centreS + off * fitted.halfWidthS,
      halfWidthS: fitted.halfWidthS * Math.exp(widen),
      direction: fitted.direction,
    };
    const slide = off === 0 && widen === 0 ? fitted : shareAt(values, beside, ringUpS);
    const size = Math.hypot(slide.shareRe, slide.shareIm);
    const own = Math.hypot(SHARE_U * size, SHARE_LEAST_U);
    return { ...slide, weight, shareStandardUncertainty: own };
  });
}

/** All but place and level. */
function beginState(state: PlaceState, guess: ColumnGuess, slide: Slide): void {
  const { mean } = state;
  mean.fill(0);
  state.covariance.fill(0);
  state.ringUpS = guess.ringUpS;
  state.crossedS = NaN;
  state.seeksCrossing = true;
  mean[SLOPE] = DYING_PER_S;
  state.setVariance(SLOPE, DYING_U_PER_S ** 2);
  state.setVariance(SLOPE + 1, TURN_U_RAD_PER_S ** 2);
  mean[SHARE] = slide.shareRe;
  mean[SHARE + 1] = slide.shareIm;
  for (let k = 0; k < 2; k += 1) {
    state.setVariance(UNREST + k, HAND.unrest ** 2);
    state.setVariance(LEVEL + k, LEVEL_U ** 2);
    state.setVariance(SHARE + k, slide.shareStandardUncertainty ** 2);
  }
}

/** The level that makes the state agree with what is heard. */
export function beginLevel({ mean }: PlaceState, heard: ToneBlock): void {
  const re = 1 + mean[SHARE] * mean[Q] - mean[SHARE + 1] * mean[Q + 1];
  const im = mean[SHARE] * mean[Q + 1] + mean[SHARE + 1] * mean[Q];
  mean[LEVEL] = heard.logSize - 0.5 * Math.log(re * re + im * im + 1e-6);
  mean[LEVEL + 1] = heard.phaseRad - Math.atan2(im, re);
}

/** Where a slide has the column at a time, before which it rested; without uncertainty. */
function placeAlong(state: PlaceState, slide: Slide, rest: number, timeS: number): void {
  const x = (slide.direction * (timeS - slide.centreS)) / slide.halfWidthS;
  const rests = -slide.direction * x > rest;
  state.mean[X] = rests ? -slide.direction * rest : x;
  state.mean[V] = rests ? 0 : slide.direction / slide.halfWidthS;
  state.settle();
}

/** From now on the column moves as the sound has it. */
function freeState(state: PlaceState, slide: Slide, timeS: number): void {
  placeAlong(state, slide, Infinity, timeS);
  const x = state.mean[X];
  const v = state.mean[V];
  state.setCovariance(X, X, CENTRE_U ** 2 + (x * WIDTH_U) ** 2);
  state.setCovariance(V, V, (v * WIDTH_U) ** 2);
  state.setCovariance(X, V, x * v * WIDTH_U ** 2);
  state.settle();
}

/** Where the filter lost the pass: the middle of the steady slide that fits best. */
const steadyCentre = ({ centreS, halfWidthS, shareRe, shareIm }: FittedPass): CentreMoment => ({
  timeS: centreS,
  standardUncertaintyS: STEADY_U * halfWidthS,
  standardUncertaintyHalfWidths: STEADY_U,
  shareRe,
  shareIm,
});

/** When the length was right, over all states that have passed it. */
function centreOf(mixture: PlaceMixture): CentreMoment | null {
  let [whole, mean, square, speed, shareRe, shareIm] = [0, 0, 0, 0, 0, 0];
  for (const state of mixture.states) {
    const v = state.mean[CROSSING + 1];
    const late = -state.mean[CROSSING] / v;
    if (Number.isNaN(state.crossedS) || !(Math.abs(late) < FARTHEST_S)) continue;
    const timeS = state.crossedS + late;
    whole += state.weight;
    mean += state.weight * timeS;
    square += state.weight * (timeS * timeS + state.variance(CROSSING) / (v * v));
    speed += state.weight * Math.abs(v);
    shareRe += state.weight * state.mean[SHARE];
    shareIm += state.weight * state.mean[SHARE + 1];
  }
  if (!(whole > LEAST_SEEN)) return null;
  const timeS = mean / whole;
  const standardUncertaintyS = Math.sqrt(Math.max(1e-8, square / whole - timeS * timeS));
  return {
    timeS,
    standardUncertaintyS,
    standardUncertaintyHalfWidths: (standardUncertaintyS * speed) / whole,
    shareRe: shareRe / whole,
    shareIm: shareIm / whole,
  };
}
