import { estimatePitch } from '../tone/frequencyEstimator.ts';
import { partedMedian } from '../numeric/quickselect.ts';
import { findStrikes } from './strikes.ts';
import { coherentPower, meanPower, noisePower, sharedView } from './toneView.ts';
import type { ToneView } from './toneView.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import type { Reused } from './passages/matchedFilter.ts';
import { NOTHING, withOne } from './shortList.ts';

/** From one strike to its damping or dying out, indices into the series. */
export interface SoundingSpan {
  readonly from: number;
  /** One past the last. */
  readonly to: number;
  /** False while it still sounds at the end of the view. */
  readonly ended: boolean;
}

/** Half of the stretch whose values are averaged in phase, s: 0.2 s in all, 5 Hz of noise. */
const HALF_S = 0.1;
/** Tone over noise where a sounding begins, and below which it ends, as ratios of powers. */
const ON = 10;
const OFF = 4;
/** Blocks whose levels tell how a sounding dies, s. */
const BLOCK_S = 0.2;
/** A tone that has fallen by 36 dB at once is damped: what is left is chance. */
const GONE = 2.5e-4;
/** Shorter stretches are a voice's vowel; shorter gaps a voice's cover or a null of a turned fork. */
const SHORTEST_S = 0.4;
const LONGEST_GAP_S = 0.35;

/** Longest time for which a voice that could drown the tone is taken to do so. */
const LONGEST_COVER_S = 0.8;

/** A long series is searched in windows of this length, s, with so much in view on either side. */
const WINDOW_S = 120;
const BESIDE_S = 0.5;

/** Spans of one search, in order; rooms beyond `count` are left from searches before. */
export class FoundSoundings {
  readonly spans: Reused<SoundingSpan>[] = [];
  count = 0;

  add(from: number, to: number, ended: boolean): void {
    const room = (this.spans[this.count] ??= { from, to, ended });
    room.from = from;
    room.to = to;
    room.ended = ended;
    this.count += 1;
  }
}

/**
 * Stretches in which a tone stands at the fork's pitch, split where the fork is struck again.
 * @param found  is filled anew
 * @param first  index into the view from which on is searched
 */
export function findSoundings(view: ToneView, found: FoundSoundings, first = 0): void {
  found.count = 0;
  findStretches(view, first, view.length);
  for (const { from, to } of stretches.closed) addParts(found, view, from, to, true);
  const { openFrom, openTo, openHasEnded } = stretches;
  if (openFrom >= 0) addParts(found, view, openFrom, openTo, openHasEnded);
}

/** Those of a whole series, in memory that grows with the longest time from one strike to the next alone. */
export function allSoundings(series: ToneSeries, offsetHz: number): readonly SoundingSpan[] {
  const shortest = Math.round(WINDOW_S * series.rateHz);
  const beside = Math.round(BESIDE_S * series.rateHz);
  const found = new FoundSoundings();
  const view = sharedView(series);
  let length = shortest;
  let isStruckAgain = false;
  for (let from = 0; from < series.length;) {
    const first = Math.max(0, from - beside);
    const to = Math.min(series.length, from + length);
    view.show(first, Math.min(series.length, to + beside), offsetHz);
    findStretches(view, from - first, to - first, isStruckAgain);
    const { closed, openFrom, openTo, openHasEnded, settled } = stretches;
    for (const stretch of closed) addParts(found, view, stretch.from, stretch.to, true);
    const isOpen = openFrom >= 0;
    if (to === series.length) {
      if (isOpen) addParts(found, view, openFrom, openTo, openHasEnded);
      break;
    }
    // A tone that fills all of the window is parted at its last strike; without one it needs a longer window.
    const isFull = first + settled === from;
    const strike = isFull ? findStrikes(view, from - first, to - first).at(-1) : undefined;
    if (isFull && (!isOpen || strike === undefined)) {
      length *= 2;
      continue;
    }
    if (isOpen && strike !== undefined) addParts(found, view, openFrom, strike, true);
    isStruckAgain = isFull;
    length = shortest;
    from = first + (strike ?? settled);
  }
  return found.spans;
}

/** What findStretches found last: one room, filled anew by each search. Indices into the view. */
const stretches = {
  closed: NOTHING as readonly { readonly from: number; readonly to: number }[],
  /** The one that still goes on, or may, at the end of the search; −1: none does. */
  openFrom: -1,
  openTo: -1,
  openHasEnded: false,
  /** A search that begins here finds the same from here on, however much is added behind. */
  settled: 0,
};

/**
 * Fills `stretches` with those in [first, end) in which a tone stands at the fork's pitch, however often struck.
 * @param isStruckAgain  true: the first index is a strike onto a fork that sounds
 */
function findStretches(view: ToneView, first: number, end: number, isStruckAgain = false): void {
  const rate = view.rateHz;
  const half = Math.max(1, Math.round(HALF_S * rate));
  let closed: { readonly from: number; readonly to: number }[] | null = null;
  const struckAt = isStruckAgain ? first : -1;
  /** Where the present stretch begins; -1: none stands. */
  let from = struckAt;
  let lastOn = first;
  /** Power of the tone where it was last clear of the noise, and for how long it should have been heard since. */
  let usual = isStruckAgain ? coherentPower(view, first + half, half) : 0;
  let missed = 0;
  for (let i = first; i < end; i += 1) {
    const power = coherentPower(view, i, half);
    const beside = noisePower(view, i, half) + 1e-20;
    if (from < 0) {
      if (power >= ON * beside) {
        from = i;
        lastOn = i;
        usual = power;
      }
      continue;
    }
    if (power >= OFF * beside && power >= GONE * usual) {
      lastOn = i;
      missed = 0;
      usual += (power - usual) / (0.3 * rate);
      continue;
    }
    if (usual > OFF * beside) missed += 1;
    if (missed > LONGEST_GAP_S * rate || i - lastOn > LONGEST_COVER_S * rate) {
      if (isLongEnough(view, from, lastOn + 1)) {
        const start = from === struckAt ? from : sharpStart(view, from);
        closed = withOne(closed, { from: start, to: sharpEnd(view, lastOn + 1) });
      }
      from = -1;
      missed = 0;
    }
  }
  stretches.closed = closed ?? NOTHING;
  stretches.openFrom = -1;
  stretches.settled = from < 0 ? end : from;
  const to = lastOn + 1;
  if (from < 0 || !isLongEnough(view, from, to)) return;
  const hasEnded = end - to > LONGEST_GAP_S * rate;
  stretches.openFrom = from === struckAt ? from : sharpStart(view, from);
  stretches.openTo = hasEnded ? sharpEnd(view, to) : to;
  stretches.openHasEnded = hasEnded;
}

const isLongEnough = (view: ToneView, from: number, to: number): boolean =>
  to - from >= SHORTEST_S * view.rateHz;

/**
 * The averaged power rises up to 0.1 s before a strike: goes on to where the power itself has come to a quarter of what
 * it soon is.
 */
function sharpStart(view: ToneView, from: number): number {
  const reach = Math.round(1.2 * HALF_S * view.rateHz);
  const usual = meanPower(view, from + 2 * reach - 3, from + 2 * reach + 4);
  for (let k = from; k < from + reach; k += 1) if (meanPower(view, k - 1, k + 2) > usual / 4) return k;
  return from;
}

/** The same for damping, backwards. */
function sharpEnd(view: ToneView, to: number): number {
  const reach = Math.round(2 * HALF_S * view.rateHz);
  const usual = meanPower(view, to - 2 * reach - 3, to - 2 * reach + 4);
  for (let k = to; k > to - reach; k -= 1) if (meanPower(view, k - 2, k + 1) > usual / 4) return k;
  return to;
}

/** Adds a stretch of a view, cut where the fork is struck again while it sounds, on the series' axis. */
function addParts(
  found: FoundSoundings,
  view: ToneView,
  start: number,
  end: number,
  hasEnded: boolean,
): void {
  const strikes = findStrikes(view, start, end);
  let from = start;
  for (let i = 0; i <= strikes.length; i += 1) {
    const to = strikes[i] ?? end;
    const ended = i < strikes.length || hasEnded;
    if (isLongEnough(view, from, to)) found.add(from + view.firstIndex, to + view.firstIndex, ended);
    from = to;
  }
}

/** Room to work in, kept from one call to the next. */
let slopes = new Float64Array(2048);

/**
 * Time in which the amplitude falls to 1/e, from a robust line through the logarithm of the level: stretches that
 * stand out of it (passages, turns of the fork) lose their weight.
 * @returns s; null where the sounding is too short or doesn't fall
 */
export function decayTimeS(series: ToneSeries, span: SoundingSpan): number | null {
  const { re, im, rateHz } = series;
  const block = Math.round(BLOCK_S * rateHz);
  const start = span.from + Math.round(0.3 * rateHz);
  const count = Math.floor((span.to - start) / block);
  if (count < 8) return null;
  // Of a long sounding every second block or fewer: pairs grow with the square.
  const stride = Math.max(1, Math.floor(count / 60));
  const logs = new Float64Array(Math.ceil(count / stride));
  for (let b = 0; b < logs.length; b += 1) {
    let sum = 0;
    const from = start + b * stride * block;
    for (let k = from; k < from + block; k += 1) sum += re[k] ** 2 + im[k] ** 2;
    logs[b] = 0.5 * Math.log(sum / block + 1e-30);
  }
  // Theil–Sen: the median of all pairwise slopes (Sen 1968) stands up to a quarter of outliers.
  const most = (logs.length * (logs.length - 1)) / 2;
  if (slopes.length < most) slopes = new Float64Array(most);
  const apart = Math.max(1, Math.ceil((1.01 * rateHz) / (stride * block)));
  let pairs = 0;
  for (let i = 0; i < logs.length; i += 1) {
    for (let j = i + apart; j < logs.length; j += 1) {
      slopes[pairs] = (logs[j] - logs[i]) / (((j - i) * stride * block) / rateHz);
      pairs += 1;
    }
  }
  if (pairs < 6) return null;
  const slope = partedMedian(slopes, pairs);
  return slope < -1 / 120 ? -1 / slope : null;
}

/**
 * Most of a sounding that its pitch is taken from, s: by then a fork has died away, while a tone that goes on for an hour
 * must not cost the square of its length.
 */
const LONGEST_PITCH_S = 60;

/** A fork's pitch in one sounding. */
export interface SoundingPitch {
  readonly offsetHz: number;
  readonly standardUncertaintyHz: number;
}

/**
 * Pitch of one sounding. To the statistical error is added what a slow shift of phase can do that no statistics
 * sees: the column's own shift while it is slid, up to about 0.3 rad from one end of the sounding to the other.
 */
export function soundingPitch(
  series: ToneSeries,
  span: SoundingSpan,
  rangeHz: number,
  noiseMeanSquare: number,
): SoundingPitch | null {
  // The strike's clang and the damping hand are left out.
  const from = span.from + Math.round(0.15 * series.rateHz);
  const to = Math.min(
    span.to - Math.round(0.1 * series.rateHz),
    from + Math.round(LONGEST_PITCH_S * series.rateHz),
  );
  const estimate = estimatePitch(series.re, series.im, from, to, series.rateHz, rangeHz, noiseMeanSquare);
  if (estimate === null) return null;
  const shiftHz = 0.3 / (2 * Math.PI * ((to - from) / series.rateHz));
  return {
    offsetHz: estimate.offsetHz,
    standardUncertaintyHz: Math.hypot(estimate.standardUncertaintyHz, shiftHz),
  };
}

/** Weighted mean of the soundings' pitches; scatter beyond their errors widens the result (Birge ratio). */
export function combinePitches(pitches: readonly SoundingPitch[]): SoundingPitch | null {
  let [sw, s] = [0, 0];
  for (const p of pitches) {
    sw += p.standardUncertaintyHz ** -2;
    s += p.offsetHz * p.standardUncertaintyHz ** -2;
  }
  if (!(sw > 0)) return null;
  const offsetHz = s / sw;
  let chiSquare = 0;
  for (const p of pitches) chiSquare += ((p.offsetHz - offsetHz) / p.standardUncertaintyHz) ** 2;
  const birge = pitches.length > 1 ? Math.max(1, Math.sqrt(chiSquare / (pitches.length - 1))) : 1;
  return { offsetHz, standardUncertaintyHz: birge / Math.sqrt(sw) };
}
