import type { SlideDirection } from '../passages/passageTemplates.ts';
import { sweptResonator } from '../sweptResonator.ts';

/** A pass as a steady slide would have made it. */
export interface SteadyPass {
  /** When the length was right, s. */
  readonly centreS: number;
  /** Time for one half width, s, > 0. */
  readonly halfWidthS: number;
  readonly direction: SlideDirection;
}

/** A steady pass with the column's part over the direct sound, m e^{iθ} / d. */
export interface FittedPass extends SteadyPass {
  readonly shareRe: number;
  readonly shareIm: number;
  /** Energy that is left. */
  readonly misfit: number;
}

/** Tone values on a grid of times, in the frame that turns with the fork. */
export interface PassValues {
  readonly timesS: Float64Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** More than this the column's part isn't taken for, at first. */
const LARGEST_SHARE = 10;
/** How far each round looks: centres in half widths, and logarithms of the width. */
const CENTRES = [-0.5, -0.25, 0.25, 0.5] as const;
const WIDTHS = [-0.4, -0.2, 0.2, 0.4] as const;
const ROUNDS = 4;
/** Coarser steps than a template's: the fit begins anew dozens of times. */
const LONGEST_STEP_S = 0.02;

/**
 * The steady slide past a resonator that rings up which fits best beside a direct sound {1, t}, by looking around
 * again and again, each time less far.
 * @param start  where to begin
 * @param ringUpS  time constant of the column, s, > 0
 */
export function fitPass(values: PassValues, start: SteadyPass, ringUpS: number): FittedPass {
  let best = shareAt(values, start, ringUpS);
  for (let round = 0; round < ROUNDS; round += 1) {
    const reach = 1 / (1 + 1.5 * round);
    const middle = best;
    for (const off of CENTRES) {
      const centreS = middle.centreS + off * reach * start.halfWidthS;
      best = better(best, shareAt(values, { ...middle, centreS }, ringUpS));
    }
    const there = best;
    for (const off of WIDTHS) {
      const halfWidthS = there.halfWidthS * Math.exp(off * reach);
      best = better(best, shareAt(values, { ...there, halfWidthS }, ringUpS));
    }
  }
  return best;
}

const better = (a: FittedPass, b: FittedPass): FittedPass => (b.misfit < a.misfit ? b : a);

/**
 * The column's part for a given slide, by least squares of {1, t, q} with complex coefficients.
 * @param ringUpS  time constant of the column, > 0
 */
export function shareAt(values: PassValues, pass: SteadyPass, ringUpS: number): FittedPass {
  const { timesS, re, im } = values;
  const n = timesS.length;
  const swept = sweptResonator(
    { halfWidthS: pass.halfWidthS, ringUpRate: 1 / ringUpS },
    timesS.map((timeS) => timeS - pass.centreS),
    Math.min(LONGEST_STEP_S, pass.halfWidthS / 6),
  );
  // A column that grows shorter draws the complex conjugate.
  const sweptIm = swept.im.map((value) => pass.direction * value);
  // {1, t} are real: q and z are freed of them, then z is projected on what is left of q.
  let middle = 0;
  for (let i = 0; i < n; i += 1) middle += timesS[i] / n;
  let spread = 0;
  for (let i = 0; i < n; i += 1) spread += (timesS[i] - middle) ** 2;
  const line = (values: ArrayLike<number>): [number, number] => {
    let mean = 0;
    let slope = 0;
    for (let i = 0; i < n; i += 1) {
      mean += values[i] / n;
      slope += (values[i] * (timesS[i] - middle)) / spread;
    }
    return [mean, slope];
  };
  const [q0, q1] = line(swept.re);
  const [p0, p1] = line(sweptIm);
  const [x0, x1] = line(re);
  const [y0, y1] = line(im);
  let [own, acrossRe, acrossIm, all] = [0, 0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    const t = timesS[i] - middle;
    const q = swept.re[i] - q0 - q1 * t;
    const p = sweptIm[i] - p0 - p1 * t;
    const x = re[i] - x0 - x1 * t;
    const y = im[i] - y0 - y1 * t;
    own += q * q + p * p;
    acrossRe += q * x + p * y;
    acrossIm += q * y - p * x;
    all += x * x + y * y;
  }
  const sizeRe = acrossRe / own;
  const sizeIm = acrossIm / own;
  // The direct sound in the centre: the line less what q's own line takes of it.
  const t = pass.centreS - middle;
  const qRe = q0 + q1 * t;
  const qIm = p0 + p1 * t;
  const directRe = x0 + x1 * t - (sizeRe * qRe - sizeIm * qIm);
  const directIm = y0 + y1 * t - (sizeRe * qIm + sizeIm * qRe);
  const direct = directRe * directRe + directIm * directIm + 1e-30;
  const shareRe = (sizeRe * directRe + sizeIm * directIm) / direct;
  const shareIm = (sizeIm * directRe - sizeRe * directIm) / direct;
  const scale = Math.min(1, LARGEST_SHARE / Math.hypot(shareRe, shareIm));
  const misfit = all - (acrossRe * acrossRe + acrossIm * acrossIm) / own;
  const { centreS, halfWidthS, direction } = pass;
  return { centreS, halfWidthS, direction, shareRe: scale * shareRe, shareIm: scale * shareIm, misfit };
}
