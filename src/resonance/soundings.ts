import { findStrikes } from './strikes.ts';
import { coherentPower, meanPower, noisePower } from './tonePower.ts';
import type { ToneView } from './toneView.ts';

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

/**
 * Stretches in which a tone stands at the fork's frequency, split where the fork is struck again.
 * @param first  index into the view from which on is searched
 */
export function findSoundings(view: ToneView, first = 0): SoundingSpan[] {
  const { closed, open } = findStretches(view, first, view.length);
  const stretches = open === null ? closed : [...closed, open];
  return stretches.flatMap((stretch) => splitAtStrikes(view, stretch));
}

/** A tone that stands, however often struck. Indices into the view. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly ended: boolean;
}

export interface FoundStretches {
  readonly closed: readonly Stretch[];
  /** The one that still goes on, or may, at the end of the search. */
  readonly open: Stretch | null;
  /** A search that begins here finds the same from here on, however much is added behind. */
  readonly settled: number;
}

/**
 * The stretches in [first, end) in which a tone stands at the fork's frequency: hysteresis between two thresholds.
 * @param isStruckAgain  true: the first index is a strike onto a fork that sounds
 */
export function findStretches(
  view: ToneView,
  first: number,
  end: number,
  isStruckAgain = false,
): FoundStretches {
  const rate = view.rateHz;
  const half = Math.max(1, Math.round(HALF_S * rate));
  const closed: Stretch[] = [];
  const struckAt = isStruckAgain ? first : null;
  /** Where the present stretch begins. */
  let from = struckAt;
  let lastOn = first;
  /** Power of the tone where it was last clear of the noise, and for how long it should have been heard since. */
  let usual = isStruckAgain ? coherentPower(view, first + half, half) : 0;
  let missed = 0;
  const startOf = (begin: number): number => (begin === struckAt ? begin : sharpStart(view, begin));
  for (let i = first; i < end; i += 1) {
    const power = coherentPower(view, i, half);
    const noise = noisePower(view, i, half) + 1e-20;
    if (from === null) {
      if (power >= ON * noise) {
        from = i;
        lastOn = i;
        usual = power;
      }
      continue;
    }
    if (power >= OFF * noise && power >= GONE * usual) {
      lastOn = i;
      missed = 0;
      usual += (power - usual) / (0.3 * rate);
      continue;
    }
    if (usual > OFF * noise) missed += 1;
    if (missed > LONGEST_GAP_S * rate || i - lastOn > LONGEST_COVER_S * rate) {
      if (isLongEnough(view, from, lastOn + 1)) {
        closed.push({ from: startOf(from), to: sharpEnd(view, lastOn + 1), ended: true });
      }
      from = null;
      missed = 0;
    }
  }
  const settled = from ?? end;
  const to = lastOn + 1;
  if (from === null || !isLongEnough(view, from, to)) return { closed, open: null, settled };
  const ended = end - to > LONGEST_GAP_S * rate;
  const open = { from: startOf(from), to: ended ? sharpEnd(view, to) : to, ended };
  return { closed, open, settled };
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

/** A stretch of a view cut where the fork is struck again while it sounds; on the series' axis. */
export function splitAtStrikes(view: ToneView, { from, to, ended }: Stretch): SoundingSpan[] {
  const cuts = [from, ...findStrikes(view, from, to), to];
  const spans: SoundingSpan[] = [];
  for (let i = 0; i + 1 < cuts.length; i += 1) {
    if (!isLongEnough(view, cuts[i], cuts[i + 1])) continue;
    const isLast = i + 2 === cuts.length;
    spans.push({
      from: cuts[i] + view.firstIndex,
      to: cuts[i + 1] + view.firstIndex,
      ended: !isLast || ended,
    });
  }
  return spans;
}
