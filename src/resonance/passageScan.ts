import type { PassageTemplate } from './passageTemplates.ts';
import { coarsen } from './toneView.ts';
import type { CoarseView, ToneView } from './toneView.ts';

/** The best shape at one place, and how well it fits there. */
export interface PassageFit {
  readonly template: PassageTemplate;
  /** Middle of the shape, index into the view (may fall between values). */
  readonly middle: number;
  /** Energy that the shape explains beyond {1, t}, coarse values' mean squares. */
  readonly gain: number;
  /** Energy that is left. */
  readonly residual: number;
  /** Complex amplitude of the shape, re and im. */
  readonly amplitude: readonly [number, number];
  /** Mean |noise|² of one coarse value over the window. */
  readonly noiseMeanSquare: number;
  /** gain / (noise + 3 × residual per value): large where the shape stands out of noise and misfit alike. */
  readonly statistic: number;
  /** Upper quartile of the same shape's statistic in the seconds around: what hand and room reach by chance. */
  readonly usual: number;
}

/** How far around a fit its usual statistic is taken, s. */
export const AROUND_S = 6;

/**
 * Slides every template over the view by least squares of {1, t, shape} with complex coefficients.
 * @returns all local maxima in time of each template with a statistic of at least `threshold`
 */
export function scanPassages(
  view: ToneView,
  bank: readonly PassageTemplate[],
  threshold: number,
): PassageFit[] {
  const grids = new Map<number, CoarseView>();
  return bank.flatMap((template) => {
    let grid = grids.get(template.step);
    if (grid === undefined) grids.set(template.step, (grid = coarsen(view, template.step)));
    const scanned = scanShape(grid, template, 0, grid.length);
    return localMaxima(scanned, threshold).map((i) => ({
      ...(scanned[i] as PassageFit),
      usual: usualStatistic(scanned, i, view.rateHz),
    }));
  });
}

/** One template at every middle in [from, to) whose window the grid holds; `usual` is left 0. */
export function scanShape(
  grid: CoarseView,
  template: PassageTemplate,
  from: number,
  to: number,
): PassageFit[] {
  const n = template.re.length;
  const last = Math.min(to, grid.length - template.after);
  const fits: PassageFit[] = [];
  for (let middle = Math.max(from, template.before); middle < last; middle += 1) {
    fits.push(fitAt(grid, template, middle, n));
  }
  return fits;
}

/** Places where the statistic is at least `threshold` and higher than at both neighbours. */
export function localMaxima(scanned: readonly PassageFit[], threshold: number): number[] {
  const at = (i: number): number => (scanned[i] as PassageFit).statistic;
  const places: number[] = [];
  for (let i = 1; i + 1 < scanned.length; i += 1) {
    if (at(i) >= threshold && at(i) >= at(i - 1) && at(i) > at(i + 1)) places.push(i);
  }
  return places;
}

/** @returns 0 for no values */
export function upperQuartile(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(0.75 * values.length)] ?? 0;
}

/** Upper quartile of the statistic around one fit, the fit's own neighbourhood left out. */
function usualStatistic(scanned: readonly PassageFit[], at: number, rateHz: number): number {
  const { step, shape } = (scanned[at] as PassageFit).template;
  const own = Math.ceil(((3 * shape.halfWidthS + 0.2) * rateHz) / step);
  const reach = own + Math.ceil((AROUND_S * rateHz) / step);
  const around: number[] = [];
  const stride = Math.max(1, Math.round(reach / 150));
  for (let i = Math.max(0, at - reach); i <= Math.min(scanned.length - 1, at + reach); i += stride) {
    if (Math.abs(i - at) > own) around.push((scanned[i] as PassageFit).statistic);
  }
  return upperQuartile(around);
}

function fitAt(grid: CoarseView, template: PassageTemplate, middle: number, n: number): PassageFit {
  const start = middle - template.before;
  const centre = (n - 1) / 2;
  let [s0, s1, t0, t1, g0, g1, energy, noise] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    const x = grid.re[start + i] as number;
    const y = grid.im[start + i] as number;
    const hx = template.re[i] as number;
    const hy = template.im[i] as number;
    const t = i - centre;
    s0 += x;
    s1 += y;
    t0 += t * x;
    t1 += t * y;
    g0 += hx * x + hy * y;
    g1 += hx * y - hy * x;
    energy += x * x + y * y;
    noise += grid.noiseMeanSquare[start + i] as number;
  }
  const tt = (n * (n * n - 1)) / 12;
  const gain = g0 * g0 + g1 * g1;
  const varied = Math.max(0, energy - (s0 * s0 + s1 * s1) / n - (t0 * t0 + t1 * t1) / tt);
  const residual = Math.max(0, varied - gain);
  const noiseMeanSquare = noise / n;
  return {
    template,
    middle: (middle + 0.5) * template.step - 0.5,
    gain,
    residual,
    amplitude: [g0 / template.norm, g1 / template.norm],
    noiseMeanSquare,
    usual: 0,
    statistic: gain / (noiseMeanSquare + (3 * residual) / Math.max(1, n - 3) + 1e-30),
  };
}

/**
 * Thins the fits out: of those of nearly the same width and place only the best stays. Shapes of different width at
 * one place all stay, for the evidence to choose between.
 * @returns best first
 */
export function distinctPassages(fits: readonly PassageFit[], rateHz: number): PassageFit[] {
  const kept: PassageFit[] = [];
  for (const fit of [...fits].sort((a, b) => b.statistic - a.statistic)) {
    const halfWidthS = fit.template.shape.halfWidthS;
    const clear = kept.every((other) => {
      const apartS = Math.abs(fit.middle - other.middle) / rateHz;
      const ratio = other.template.shape.halfWidthS / halfWidthS;
      return ratio > 1.6 || ratio < 1 / 1.6 || apartS > 0.05 + Math.max(1, ratio) * halfWidthS;
    });
    if (clear) kept.push(fit);
  }
  return kept;
}
