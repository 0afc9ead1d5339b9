import type { ToneView } from './toneView.ts';

/** A second tone beside the fork's. */
export interface SecondFork {
  /** Its pitch less the fork's, Hz. */
  readonly offsetHz: number;
  /** Its level less the fork's, dB. */
  readonly levelDb: number;
  /** Middle of the stretch in which it was found, index into the view. */
  readonly middle: number;
}

/** Narrow values averaged to one: 20 a second, which holds ±10 Hz. */
const STEP = 5;
const LEAST_S = 3;
const MOST_S = 8;
const HIGHEST_HZ = 2.6;
/** Share of all that is left over after a parabola that the second tone must explain. */
const SHARE = 0.45;
/** Its power over that at the mirror frequency: a wobbling hand makes both sidebands alike, another fork only one. */
const ONE_SIDED = 20;
const CLEAR = 30;
const FAINTEST_DB = -22;

/**
 * Looks for a second fork of nearly the same pitch in a stretch without passages. The own fork is a slow change, a
 * parabola in the frame that turns with it; the other one turns on at the difference of their pitches, which is heard
 * as a beat.
 * @param from  first value, index into the view; `to`: one past the last; at least 3 s, at most 8 s are used
 * @returns null where there is none
 */
export function findSecondFork(view: ToneView, from: number, to: number): SecondFork | null {
  const length = Math.min(to - from, Math.round(MOST_S * view.rateHz));
  if (length < LEAST_S * view.rateHz) return null;
  const n = Math.floor(length / STEP);
  const time = Float64Array.from({ length: n }, (_, i) => ((i - (n - 1) / 2) * STEP) / view.rateHz);
  const basis = parabolaBasis(time);
  const re = new Float64Array(n);
  const im = new Float64Array(n);
  let noise = 0;
  let [x, y] = [0, 0];
  for (let i = 0; i < n; i += 1) {
    let [sumRe, sumIm] = [0, 0];
    for (let k = from + i * STEP; k < from + (i + 1) * STEP; k += 1) {
      sumRe += view.re[k] / STEP;
      sumIm += view.im[k] / STEP;
      noise += (view.noiseDensity[k] * (view.rateHz / STEP)) / STEP / n;
    }
    re[i] = sumRe;
    im[i] = sumIm;
    x += sumRe / n;
    y += sumIm / n;
  }
  takeOff(re, basis);
  takeOff(im, basis);
  let left = 0;
  for (let i = 0; i < n; i += 1) left += re[i] ** 2 + im[i] ** 2;

  const spanS = (n * STEP) / view.rateHz;
  let best = { hz: 0, gain: 0, power: 0 };
  for (let hz = 1.2 / spanS; hz < HIGHEST_HZ; hz += 0.15 / spanS) {
    for (const sign of [1, -1]) {
      const line = lineAt(re, im, time, basis, sign * hz);
      if (line.gain > best.gain) best = { hz: sign * hz, ...line };
    }
  }
  const mirror = lineAt(re, im, time, basis, -best.hz).gain;
  const levelDb = 10 * Math.log10(best.power / (x * x + y * y));
  const isOther =
    best.gain > SHARE * left &&
    best.gain > ONE_SIDED * mirror &&
    best.power * n > CLEAR * noise &&
    levelDb > FAINTEST_DB;
  return isOther ? { offsetHz: best.hz, levelDb, middle: from + Math.round((n * STEP) / 2) } : null;
}

/** 1, t and t² made orthogonal and of unit length. */
function parabolaBasis(time: Float64Array): Float64Array[] {
  const basis: Float64Array[] = [];
  for (const power of [0, 1, 2]) {
    const shape = time.map((t) => t ** power);
    takeOff(shape, basis);
    const size = Math.hypot(...shape);
    basis.push(shape.map((value) => value / size));
  }
  return basis;
}

/** Takes off, in place, what the basis explains. */
function takeOff(values: Float64Array, basis: readonly Float64Array[]): void {
  for (const shape of basis) {
    let dot = 0;
    for (let i = 0; i < values.length; i += 1) dot += values[i] * shape[i];
    for (let i = 0; i < values.length; i += 1) {
      values[i] = values[i] - dot * shape[i];
    }
  }
}

/** Room to work in, kept from one call to the next: of most stretches the longest length is looked at. */
let cos = new Float64Array(0);
let sin = new Float64Array(0);

/** Energy that a turning phasor of this frequency explains, and its power. */
function lineAt(
  re: Float64Array,
  im: Float64Array,
  time: Float64Array,
  basis: readonly Float64Array[],
  hz: number,
): { gain: number; power: number } {
  if (cos.length !== time.length) {
    cos = new Float64Array(time.length);
    sin = new Float64Array(time.length);
  }
  for (let i = 0; i < time.length; i += 1) {
    const angle = 2 * Math.PI * hz * time[i];
    cos[i] = Math.cos(angle);
    sin[i] = Math.sin(angle);
  }
  takeOff(cos, basis);
  takeOff(sin, basis);
  let [norm, x, y] = [0, 0, 0];
  for (let i = 0; i < time.length; i += 1) {
    const [c, s] = [cos[i], sin[i]];
    norm += c * c + s * s;
    x += re[i] * c + im[i] * s;
    y += im[i] * c - re[i] * s;
  }
  const gain = norm > 0 ? (x * x + y * y) / norm : 0;
  return { gain, power: norm > 0 ? gain / norm : 0 };
}
