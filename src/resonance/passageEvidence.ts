import type { PassageFit } from './passageScan.ts';
import type { ToneView } from './toneView.ts';

/**
 * What speaks for or against a passage, each a physical quantity. Logarithms of powers are natural, so that a step
 * of 1 is 4.3 dB.
 */
export interface PassageEvidence {
  /** When the level peaked, index into the view. */
  readonly peakIndex: number;
  /** ln of the fit's statistic. */
  readonly statistic: number;
  /** ln of the shape's energy over the noise of one value. */
  readonly signalToNoise: number;
  /** ln of the shape's energy over what the fit leaves. */
  readonly fit: number;
  /** ln of the statistic over what the same shape usually reaches around here. */
  readonly contrast: number;
  /** ln(1 + tone power / noise power) before the passage, the tone averaged in phase; 0 where no fork sounds. */
  readonly before: number;
  /** The same after it. */
  readonly after: number;
  /** ln of the peak's power over the power before it; at most the distance to the noise. */
  readonly riseOverBefore: number;
  readonly riseOverAfter: number;
  /** ln of the peak's power over the lowest power within four half widths and 0.3 s before; and after. */
  readonly dropBefore: number;
  readonly dropAfter: number;
  /** ln of the half width in s. */
  readonly width: number;
  /** ln of the time that was waited after the middle, in half widths. */
  readonly hindsight: number;
  /** ln of the energy off the line through the origin, over the noise left there: phase that really turns. */
  readonly offLine: number;
  /** The off-line energy as a share of the passage's whole energy, 0..0.5: what no amplitude change can give. */
  readonly roundness: number;
  /**
   * Area that the phasor's path encloses, over that of a full circle as wide as the path, 0..1.5: about 1 for a passage
   * at whatever speed, 0 for a fork that comes and goes (a straight path out and back).
   */
  readonly loop: number;
  /** ln of the residual of a straight out-and-back bump over the shape's residual. */
  readonly overBump: number;
  /** ln of the flanks' density during the passage over that around it: a talker's burst. */
  readonly burst: number;
  /** ln of the power in the far flanks (460 Hz in all) over the peak's: a voice's harmonic has neighbours, a fork none. */
  readonly company: number;
  /** cos of the phase step from before to after: the circle returns to where it began. */
  readonly phaseReturn: number;
  /** Full swing of the fitted phasor's angle within two half widths, rad. */
  readonly phaseSwingRad: number;
  /** Half-power moments around the peak, indices into the view. */
  readonly halfPowerStart: number;
  readonly halfPowerEnd: number;
  /** Smoothed powers (mean |tone|², noise off): at the peak, and the mean of before and after. */
  readonly peakPower: number;
  readonly sidePower: number;
  /** Noise mean square in the smoothed power's band. */
  readonly noisePower: number;
}

/** Tone power around an index: coherent mean of 2·half+1 values, its noise taken off (may be negative). */
export function smoothedPower(view: ToneView, index: number, half: number): number {
  const from = Math.max(0, index - half);
  const to = Math.min(view.length - 1, index + half);
  const n = to - from + 1;
  let [x, y, noise] = [0, 0, 0];
  for (let k = from; k <= to; k += 1) {
    x += view.re[k] as number;
    y += view.im[k] as number;
    noise += view.noiseDensity[k] as number;
  }
  return (x * x + y * y) / (n * n) - (noise / n) * Math.min(view.bandwidthHz, view.rateHz / n);
}

interface Side {
  readonly power: number;
  readonly noise: number;
  readonly re: number;
  readonly im: number;
}

/** Mean phasor of a stretch, with its noise. */
function side(view: ToneView, fromIndex: number, toIndex: number): Side {
  const from = Math.max(0, Math.round(fromIndex));
  const to = Math.min(view.length - 1, Math.round(toIndex));
  const n = to - from + 1;
  if (n < 3) return { power: 0, noise: 1e-30, re: 0, im: 0 };
  let [x, y, noise] = [0, 0, 0];
  for (let k = from; k <= to; k += 1) {
    x += view.re[k] as number;
    y += view.im[k] as number;
    noise += view.noiseDensity[k] as number;
  }
  return {
    re: x / n,
    im: y / n,
    power: (x * x + y * y) / (n * n),
    noise: (noise / n) * Math.min(view.bandwidthHz, view.rateHz / n) + 1e-30,
  };
}

/**
 * Looks at one fit with all that stands before and after it in the view.
 * @param afterLimit  last index that may be used (a live look ends at the present)
 */
export function gatherEvidence(
  view: ToneView,
  fit: PassageFit,
  afterLimit = view.length - 1,
): PassageEvidence {
  const rate = view.rateHz;
  const w = fit.template.shape.halfWidthS * rate;
  const middle = fit.middle;
  const half = Math.max(2, Math.min(15, Math.round(0.25 * w)));

  // The level's own maximum near the middle of the shape.
  const reach = Math.round(w + 0.08 * rate);
  const first = Math.max(0, Math.round(middle) - reach);
  const last = Math.min(afterLimit, Math.round(middle) + reach);
  let peakIndex = first;
  let peakPower = -Infinity;
  for (let k = first; k <= last; k += 1) {
    const power = smoothedPower(view, k, Math.min(half, afterLimit - k + half));
    if (power > peakPower) {
      peakPower = power;
      peakIndex = k;
    }
  }
  const gap = 1.8 * w + 0.03 * rate;
  const span = Math.max(0.12 * rate, 2.5 * w);
  const before = side(view, middle - gap - span, middle - gap);
  const afterFrom = Math.min(middle + gap, afterLimit - 0.1 * rate);
  const after = side(view, afterFrom, Math.min(middle + gap + span, afterLimit));
  const noisePower =
    (view.noiseDensity[peakIndex] as number) * Math.min(view.bandwidthHz, rate / (2 * half + 1)) + 1e-30;
  const peak = Math.max(peakPower, noisePower);
  const beforePower = Math.max(before.power - before.noise, 0);
  const afterPower = Math.max(after.power - after.noise, 0);

  const halfPower = halfPowerMoments(view, peakIndex, peak, half, afterLimit);
  const line = offLineEnergy(
    view,
    Math.round(middle - 2.5 * w),
    Math.min(afterLimit, Math.round(middle + 2.5 * w)),
  );
  const core = meanOf(view.noiseDensity, middle - w, Math.min(afterLimit, middle + w));
  const around = meanOf(view.noiseDensity, middle - 3 * rate, Math.min(afterLimit, middle + 3 * rate));
  const both = Math.hypot(before.re, before.im) * Math.hypot(after.re, after.im);
  return {
    peakIndex,
    statistic: Math.log(fit.statistic),
    signalToNoise: Math.log((fit.gain + 1e-30) / (fit.noiseMeanSquare + 1e-30)),
    fit: Math.log((fit.gain + 1e-30) / (fit.residual + 1e-30)),
    contrast: Math.log(fit.statistic / (1 + fit.usual)),
    before: Math.log(1 + before.power / before.noise),
    after: Math.log(1 + after.power / after.noise),
    riseOverBefore: Math.log(peak / Math.max(beforePower, noisePower)),
    riseOverAfter: Math.log(peak / Math.max(afterPower, noisePower)),
    dropBefore: Math.log(
      peak / Math.max(lowest(view, peakIndex, -1, 4 * w + 0.3 * rate, half, afterLimit), noisePower),
    ),
    dropAfter: Math.log(
      peak / Math.max(lowest(view, peakIndex, 1, 4 * w + 0.3 * rate, half, afterLimit), noisePower),
    ),
    width: Math.log(fit.template.shape.halfWidthS),
    hindsight: Math.log((fit.template.after * fit.template.step) / w),
    offLine: Math.log(1 + line.offLine / (line.noise + 1e-30)),
    roundness: line.total > 0 ? line.offLine / line.total : 0,
    loop: loopArea(view, Math.round(middle - 3 * w), Math.min(afterLimit, Math.round(middle + 3 * w)), half),
    overBump: Math.log((bumpResidual(view, fit, afterLimit) + 1e-30) / (fit.residual + 1e-30)),
    burst: Math.log((core + 1e-30) / (around + 1e-30)),
    company: Math.log(
      (460 * meanOf(view.farDensity, middle - w, Math.min(afterLimit, middle + w)) + 1e-30) / peak,
    ),
    phaseReturn: both > 0 ? (before.re * after.re + before.im * after.im) / both : 0,
    phaseSwingRad: phaseSwing(
      view,
      Math.round(middle - 2 * w),
      Math.min(afterLimit, Math.round(middle + 2 * w)),
      half,
    ),
    halfPowerStart: halfPower[0],
    halfPowerEnd: halfPower[1],
    peakPower: peak,
    sidePower: (beforePower + afterPower) / 2,
    noisePower,
  };
}

/** Lowest smoothed power on one side of an index. */
function lowest(
  view: ToneView,
  index: number,
  direction: 1 | -1,
  reach: number,
  half: number,
  afterLimit: number,
): number {
  let least = Infinity;
  const end = Math.round(Math.max(half, Math.min(afterLimit - half, index + direction * reach)));
  for (let k = index; direction * (end - k) >= 0; k += direction * Math.max(1, half >> 1)) {
    least = Math.min(least, smoothedPower(view, k, half));
  }
  return Number.isFinite(least) ? least : 0;
}

/** Where the smoothed power falls to half the peak's on either side, at most 3 s away. */
function halfPowerMoments(
  view: ToneView,
  peakIndex: number,
  peakPower: number,
  half: number,
  afterLimit: number,
): [number, number] {
  const reach = Math.round(3 * view.rateHz);
  let start = peakIndex;
  while (start > Math.max(0, peakIndex - reach) && smoothedPower(view, start, half) > peakPower / 2)
    start -= 1;
  let end = peakIndex;
  while (end < Math.min(afterLimit, peakIndex + reach) && smoothedPower(view, end, half) > peakPower / 2)
    end += 1;
  return [start, end];
}

/**
 * Energy across the best line through the origin: the smaller eigenvalue of Σ (x, y)(x, y)ᵀ, less the noise's share.
 * An amplitude that changes, even through zero, stays on a line; a passage draws a circle.
 */
function offLineEnergy(
  view: ToneView,
  fromIndex: number,
  toIndex: number,
): { offLine: number; total: number; noise: number } {
  let [xx, yy, xy, noise] = [0, 0, 0, 0];
  const from = Math.max(0, fromIndex);
  for (let k = from; k <= Math.min(view.length - 1, toIndex); k += 1) {
    const x = view.re[k] as number;
    const y = view.im[k] as number;
    xx += x * x;
    yy += y * y;
    xy += x * y;
    noise += ((view.noiseDensity[k] as number) * view.bandwidthHz) / 2;
  }
  const total = xx + yy;
  const smaller = total / 2 - Math.hypot((xx - yy) / 2, xy);
  return { offLine: Math.max(0, smaller - noise), total, noise };
}

/** Signed area of the smoothed path closed by its chord, over the area of a circle of the path's width. */
function loopArea(view: ToneView, fromIndex: number, toIndex: number, half: number): number {
  const path: [number, number][] = [];
  for (let k = Math.max(0, fromIndex); k <= Math.min(view.length - 1, toIndex); k += Math.max(1, half >> 1)) {
    let [x, y, n] = [0, 0, 0];
    for (let i = Math.max(0, k - half); i <= Math.min(view.length - 1, k + half); i += 1) {
      x += view.re[i] as number;
      y += view.im[i] as number;
      n += 1;
    }
    path.push([x / n, y / n]);
  }
  if (path.length < 4) return 0;
  const first = path[0] as [number, number];
  const last = path[path.length - 1] as [number, number];
  const base: [number, number] = [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
  let area = 0;
  let width = 0;
  let previous = last;
  for (const point of path) {
    area += (previous[0] - base[0]) * (point[1] - base[1]) - (previous[1] - base[1]) * (point[0] - base[0]);
    width = Math.max(width, Math.hypot(point[0] - base[0], point[1] - base[1]));
    previous = point;
  }
  return width > 0 ? Math.min(1.5, Math.abs(area / 2) / ((Math.PI / 4) * width * width)) : 0;
}

/** What a fit of {1, t, bump} leaves, the bump as wide as the shape but with no turn of phase: 1 / (1 + (t/w)²). */
function bumpResidual(view: ToneView, fit: PassageFit, afterLimit: number): number {
  const { step, before, after, shape } = fit.template;
  const n = before + 1 + after;
  const middle = Math.round((fit.middle + 0.5) / step - 0.5);
  const w = (shape.halfWidthS * view.rateHz) / step;
  const centre = (n - 1) / 2;
  const tt = (n * (n * n - 1)) / 12;
  const bump = new Float64Array(n);
  let [m, s] = [0, 0];
  for (let i = 0; i < n; i += 1) {
    const b = 1 / (1 + ((i - before) / w) ** 2);
    bump[i] = b;
    m += b / n;
    s += ((i - centre) * b) / tt;
  }
  let norm = 0;
  for (let i = 0; i < n; i += 1) {
    bump[i] = (bump[i] as number) - m - s * (i - centre);
    norm += (bump[i] as number) ** 2;
  }
  let [s0, s1, t0, t1, g0, g1, energy] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    const grid = middle - before + i;
    let [x, y] = [0, 0];
    for (let k = grid * step; k < (grid + 1) * step; k += 1) {
      if (k < 0 || k > afterLimit) continue;
      x += view.re[k] as number;
      y += view.im[k] as number;
    }
    x /= step;
    y /= step;
    s0 += x;
    s1 += y;
    t0 += (i - centre) * x;
    t1 += (i - centre) * y;
    g0 += (bump[i] as number) * x;
    g1 += (bump[i] as number) * y;
    energy += x * x + y * y;
  }
  return Math.max(
    0,
    energy - (s0 * s0 + s1 * s1) / n - (t0 * t0 + t1 * t1) / tt - (g0 * g0 + g1 * g1) / norm,
  );
}

function meanOf(values: Float64Array, fromIndex: number, toIndex: number): number {
  const from = Math.max(0, Math.round(fromIndex));
  const to = Math.min(values.length - 1, Math.round(toIndex));
  let sum = 0;
  for (let k = from; k <= to; k += 1) sum += values[k] as number;
  return sum / Math.max(1, to - from + 1);
}

/** Full swing of the angle of the smoothed phasor, followed without jumps. */
function phaseSwing(view: ToneView, fromIndex: number, toIndex: number, half: number): number {
  let [angle, low, high] = [0, 0, 0];
  let previous: [number, number] | null = null;
  for (let k = Math.max(0, fromIndex); k <= Math.min(view.length - 1, toIndex); k += Math.max(1, half >> 1)) {
    let [x, y] = [0, 0];
    for (let i = Math.max(0, k - half); i <= Math.min(view.length - 1, k + half); i += 1) {
      x += view.re[i] as number;
      y += view.im[i] as number;
    }
    if (previous !== null) {
      angle += Math.atan2(previous[0] * y - previous[1] * x, previous[0] * x + previous[1] * y);
      low = Math.min(low, angle);
      high = Math.max(high, angle);
    }
    previous = [x, y];
  }
  return high - low;
}
