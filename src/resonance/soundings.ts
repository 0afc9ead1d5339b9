import { estimatePitch } from '../tone/pitchEstimate.ts';
import { findStrikes } from './strikes.ts';
import type { ToneView } from './toneView.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';

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
/** A tone that has fallen by 36 dB at once is damped: what is left is chance. */
const GONE = 2.5e-4;
/** Shorter stretches are a voice's vowel; shorter gaps a voice's cover or a null of a turned fork. */
const SHORTEST_S = 0.4;
const LONGEST_GAP_S = 0.35;

/** Longest time for which a voice that could drown the tone is taken to do so. */
const LONGEST_COVER_S = 0.8;

interface ToneAndNoise {
  /** Power of the tone, averaged in phase over 0.2 s, at each value of the view. */
  readonly tone: Float64Array;
  /** Noise power in the same band. */
  readonly noise: Float64Array;
}

function toneAndNoise(view: ToneView): ToneAndNoise {
  const half = Math.max(1, Math.round(HALF_S * view.rateHz));
  const sums = [
    new Float64Array(view.length + 1),
    new Float64Array(view.length + 1),
    new Float64Array(view.length + 1),
  ];
  const [sumRe, sumIm, sumNoise] = sums as [Float64Array, Float64Array, Float64Array];
  for (let i = 0; i < view.length; i += 1) {
    sumRe[i + 1] = (sumRe[i] as number) + (view.re[i] as number);
    sumIm[i + 1] = (sumIm[i] as number) + (view.im[i] as number);
    sumNoise[i + 1] = (sumNoise[i] as number) + (view.noiseDensity[i] as number);
  }
  const tone = new Float64Array(view.length);
  const noise = new Float64Array(view.length);
  for (let i = 0; i < view.length; i += 1) {
    const from = Math.max(0, i - half);
    const to = Math.min(view.length, i + half + 1);
    const n = to - from;
    const re = ((sumRe[to] as number) - (sumRe[from] as number)) / n;
    const im = ((sumIm[to] as number) - (sumIm[from] as number)) / n;
    tone[i] = re * re + im * im;
    noise[i] = (((sumNoise[to] as number) - (sumNoise[from] as number)) / n) * (view.rateHz / n) + 1e-20;
  }
  return { tone, noise };
}

/** Stretches in which a tone stands at the fork's pitch, split where the fork is struck again. */
export function findSoundings(view: ToneView): SoundingSpan[] {
  return findStretches(view)
    .flatMap((span) => splitAtStrikes(view, span))
    .map((span) => ({ ...span, from: span.from + view.firstIndex, to: span.to + view.firstIndex }));
}

/** Stretches in which a tone stands at the fork's pitch, however often struck. Indices into the view. */
export function findStretches(view: ToneView): SoundingSpan[] {
  const { tone, noise } = toneAndNoise(view);
  const rate = view.rateHz;
  const spans: SoundingSpan[] = [];
  let from: number | null = null;
  let lastOn = 0;
  /** Power of the tone where it was last clear of the noise, and for how long it should have been heard since. */
  let usual = 0;
  let missed = 0;
  const close = (to: number, ended: boolean): void => {
    if (from !== null && to - from >= SHORTEST_S * rate) {
      spans.push({ from: sharpStart(view, from), to: ended ? sharpEnd(view, to) : to, ended });
    }
    from = null;
  };
  for (let i = 0; i < view.length; i += 1) {
    const power = tone[i] as number;
    const beside = noise[i] as number;
    if (from === null) {
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
      close(lastOn + 1, true);
      missed = 0;
    }
  }
  close(lastOn + 1, view.length - 1 - lastOn > LONGEST_GAP_S * rate);
  return spans;
}

/**
 * The averaged power rises up to 0.1 s before a strike: goes on to where the power itself has come to a quarter of what
 * it soon is.
 */
function sharpStart(view: ToneView, from: number): number {
  const reach = Math.round(1.2 * HALF_S * view.rateHz);
  const usual = powerAt(view, from + 2 * reach, 3);
  for (let k = from; k < from + reach; k += 1) if (powerAt(view, k, 1) > usual / 4) return k;
  return from;
}

/** The same for damping, backwards. */
function sharpEnd(view: ToneView, to: number): number {
  const reach = Math.round(2 * HALF_S * view.rateHz);
  const usual = powerAt(view, to - 2 * reach, 3);
  for (let k = to; k > to - reach; k -= 1) if (powerAt(view, k - 1, 1) > usual / 4) return k;
  return to;
}

function powerAt(view: ToneView, index: number, half: number): number {
  let [sum, n] = [0, 0];
  for (let k = Math.max(0, index - half); k <= Math.min(view.length - 1, index + half); k += 1) {
    sum += (view.re[k] as number) ** 2 + (view.im[k] as number) ** 2;
    n += 1;
  }
  return sum / Math.max(1, n);
}

/** Cuts a stretch where the fork is struck again while it sounds. */
function splitAtStrikes(view: ToneView, span: SoundingSpan): SoundingSpan[] {
  const edges = [span.from, ...findStrikes(view, span.from, span.to), span.to];
  const parts: SoundingSpan[] = [];
  for (let i = 0; i + 1 < edges.length; i += 1) {
    const from = edges[i] as number;
    const to = edges[i + 1] as number;
    if (to - from >= SHORTEST_S * view.rateHz)
      parts.push({ from, to, ended: i + 2 < edges.length || span.ended });
  }
  return parts;
}

/**
 * Time in which the amplitude falls to 1/e, from a robust line through the logarithm of the level: stretches that
 * stand out of it (passages, turns of the fork) lose their weight.
 * @returns s; null where the sounding is too short or doesn't fall
 */
export function decayTimeS(series: ToneSeries, span: SoundingSpan): number | null {
  const block = Math.round(0.2 * series.rateHz);
  const start = span.from + Math.round(0.3 * series.rateHz);
  const times: number[] = [];
  const logs: number[] = [];
  for (let k = start; k + block <= span.to; k += block) {
    let sum = 0;
    for (let i = k; i < k + block; i += 1)
      sum += (series.re[i] as number) ** 2 + (series.im[i] as number) ** 2;
    if (sum > 0) {
      times.push((k + block / 2) / series.rateHz);
      logs.push(0.5 * Math.log(sum / block));
    }
  }
  if (times.length < 8) return null;
  // Theil–Sen: the median of all pairwise slopes (Sen 1968) stands up to a quarter of outliers.
  const slopes: number[] = [];
  const stride = Math.max(1, Math.floor(times.length / 60));
  for (let i = 0; i < times.length; i += stride) {
    for (let j = i + stride; j < times.length; j += stride) {
      const dt = (times[j] as number) - (times[i] as number);
      if (dt > 1) slopes.push(((logs[j] as number) - (logs[i] as number)) / dt);
    }
  }
  if (slopes.length < 6) return null;
  slopes.sort((a, b) => a - b);
  const slope = slopes[slopes.length >> 1] as number;
  return slope < -1 / 120 ? -1 / slope : null;
}

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
  const to = span.to - Math.round(0.1 * series.rateHz);
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
