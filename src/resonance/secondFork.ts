import type { ToneView } from './toneView.ts';

/** A second tone beside the fork's. */
export interface SecondFork {
  /** Its frequency less the fork's, Hz. */
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

/** What is left of a stretch when the own fork, a parabola, is taken off. */
interface Residual {
  readonly timeS: Float64Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** 1, t and t², orthogonal and of unit length: what was taken off. */
  readonly basis: readonly Float64Array[];
}

/**
 * Looks for a second fork of nearly the same frequency in a stretch without passages. The own fork is a slow change, a
 * parabola in the frame that turns with it; the other one turns on at the difference of their frequencies, which is
 * heard as a beat.
 * @param from  first value, index into the view; `to`: one past the last; at least 3 s, at most 8 s are used
 * @returns null where there is none
 */
export function findSecondFork(view: ToneView, from: number, to: number): SecondFork | null {
  const length = Math.min(to - from, Math.round(MOST_S * view.rateHz));
  if (length < LEAST_S * view.rateHz) return null;
  const n = Math.floor(length / STEP);
  const timeS = Float64Array.from({ length: n }, (_, i) => ((i - (n - 1) / 2) * STEP) / view.rateHz);
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
  const basis = parabolaBasis(timeS);
  takeOff(re, basis);
  takeOff(im, basis);
  const residual = { timeS, re, im, basis };
  const best = strongestLine(residual, (n * STEP) / view.rateHz);
  const mirror = lineAt(residual, -best.hz).gain;
  const levelDb = 10 * Math.log10(best.power / (x * x + y * y));
  const isOther =
    best.gain > SHARE * energyOf(residual) &&
    best.gain > ONE_SIDED * mirror &&
    best.power * n > CLEAR * noise &&
    levelDb > FAINTEST_DB;
  return isOther ? { offsetHz: best.hz, levelDb, middle: from + Math.round((n * STEP) / 2) } : null;
}

function energyOf({ re, im }: Residual): number {
  let energy = 0;
  for (let i = 0; i < re.length; i += 1) energy += re[i] ** 2 + im[i] ** 2;
  return energy;
}

/** 1, t and t² made orthogonal and of unit length. */
function parabolaBasis(timeS: Float64Array): Float64Array[] {
  const basis: Float64Array[] = [];
  for (const power of [0, 1, 2]) {
    const shape = timeS.map((t) => t ** power);
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
    for (let i = 0; i < values.length; i += 1) values[i] -= dot * shape[i];
  }
}

/** A phasor that turns at one frequency. */
interface Line {
  readonly hz: number;
  /** Energy that it explains, and its power. */
  readonly gain: number;
  readonly power: number;
}

/** The frequency that explains most, of either sign, from the first that the stretch can tell from a parabola on. */
function strongestLine(residual: Residual, spanS: number): Line {
  let best: Line = { hz: 0, gain: 0, power: 0 };
  for (let hz = 1.2 / spanS; hz < HIGHEST_HZ; hz += 0.15 / spanS) {
    for (const sign of [1, -1]) {
      const line = lineAt(residual, sign * hz);
      if (line.gain > best.gain) best = line;
    }
  }
  return best;
}

function lineAt({ timeS, re, im, basis }: Residual, hz: number): Line {
  const cos = timeS.map((t) => Math.cos(2 * Math.PI * hz * t));
  const sin = timeS.map((t) => Math.sin(2 * Math.PI * hz * t));
  takeOff(cos, basis);
  takeOff(sin, basis);
  let [norm, x, y] = [0, 0, 0];
  for (let i = 0; i < timeS.length; i += 1) {
    const [c, s] = [cos[i], sin[i]];
    norm += c * c + s * s;
    x += re[i] * c + im[i] * s;
    y += im[i] * c - re[i] * s;
  }
  const gain = norm > 0 ? (x * x + y * y) / norm : 0;
  return { hz, gain, power: norm > 0 ? gain / norm : 0 };
}
