import { CoarseGrid } from './decimatedView.ts';
import type { PassageTemplate, SlideDirection } from './passageTemplates.ts';
import { stretchSum } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/** The best shape at one place, and how well it fits there. */
export interface PassageFit {
  readonly template: PassageTemplate;
  readonly direction: SlideDirection;
  /** Middle of the shape, index into the view (may fall between values). */
  readonly middle: number;
  /** Energy that the shape explains beyond {1, t}, coarse values' mean squares. */
  readonly gain: number;
  /** Energy that is left. */
  readonly residual: number;
  /** Mean |noise|² of one coarse value over the window. */
  readonly noiseMeanSquare: number;
  /** gain / (noise + 3 × residual per value): large where the shape stands out of noise and misfit alike. */
  readonly statistic: number;
  /** Upper quartile of the same shape's statistic in the seconds around: what hand and room reach by chance. */
  readonly usual: number;
}

/** One that is filled anew, so that a live look leaves no litter. */
export type Reused<T> = { -readonly [Key in keyof T]: T[Key] };

/** How far around a fit its usual statistic is taken, s. */
export const AROUND_S = 6;
/** Cells that are scanned at a time: bounds the memory and keeps the running sums' digits. */
const CHUNK = 4096;

/** Statistics of one template at a row of middles, the column growing longer or shorter. */
export interface StatisticRow {
  readonly longer: Float64Array;
  readonly shorter: Float64Array;
}

/** Room to work in, kept from one call to the next: a long series is scanned in many. */
const grids = new Map<number, CoarseGrid>();
let spareRow: StatisticRow = { longer: new Float64Array(0), shorter: new Float64Array(0) };

function gridOf(step: number): CoarseGrid {
  const grid = grids.get(step) ?? new CoarseGrid(step);
  grids.set(step, grid);
  return grid;
}

/** Room for the statistics at `count` middles. */
function rowOf(count: number): StatisticRow {
  if (spareRow.longer.length < count) {
    spareRow = { longer: new Float64Array(count), shorter: new Float64Array(count) };
  }
  return {
    longer: spareRow.longer.subarray(0, count),
    shorter: spareRow.shorter.subarray(0, count),
  };
}

/**
 * Slides every template over the view by least squares of {1, t, shape} with complex coefficients.
 * @param fits  filled with all local maxima in time of each template with a statistic of at least `threshold`
 * @returns how many there are
 */
export function scanPassages(
  view: ToneView,
  bank: readonly PassageTemplate[],
  threshold: number,
  fits: Reused<PassageFit>[],
): number {
  let found = 0;
  for (const template of bank) {
    const grid = gridOf(template.step);
    const { before, after } = template;
    const middles = grid.cellsIn(view) - before - after;
    if (middles < 3) continue;
    const row = rowOf(middles);
    for (let from = 0; from < middles; from += CHUNK) {
      const count = Math.min(CHUNK, middles - from);
      grid.fill(view, from, count + before + after);
      scanTemplate(grid, template, before, count, row, from);
    }
    for (const direction of [1, -1] as const) {
      const statistics = direction === 1 ? row.longer : row.shorter;
      for (
        let at = nextMaximum(statistics, 0, middles, threshold);
        at >= 0;
        at = nextMaximum(statistics, at + 1, middles, threshold)
      ) {
        grid.fill(view, at, before + 1 + after);
        const fit = (fits[found] ??= blankFit(template));
        fit.usual = usualStatistic(statistics, at, template, view.rateHz);
        fitPassage(grid, template, direction, before, fit);
        found += 1;
      }
    }
  }
  return found;
}

/**
 * Statistics of one template at `count` middles in a row, both directions.
 * @param middle  first middle, a cell of the grid with at least `before` cells before it
 * @param at  where in the row the first one is written
 */
export function scanTemplate(
  grid: CoarseGrid,
  template: PassageTemplate,
  middle: number,
  count: number,
  row: StatisticRow,
  at = 0,
): void {
  const n = template.re.length;
  const { re: shapeRe, im: shapeIm } = template;
  const { re, im } = grid;
  for (let i = 0; i < count; i += 1) {
    const start = middle + i - template.before;
    // The four real sums give the projection on the shape and on its conjugate.
    let a = 0;
    let b = 0;
    let c = 0;
    let d = 0;
    for (let j = 0; j < n; j += 1) {
      const x = re[start + j];
      const y = im[start + j];
      const hx = shapeRe[j];
      const hy = shapeIm[j];
      a += hx * x;
      b += hy * y;
      c += hx * y;
      d += hy * x;
    }
    const varied = variedEnergy(grid, start, n);
    const noise = stretchSum(grid.sumNoise, start, start + n) / n;
    row.longer[at + i] = statisticOf((a + b) ** 2 + (c - d) ** 2, varied, noise, n);
    row.shorter[at + i] = statisticOf((a - b) ** 2 + (c + d) ** 2, varied, noise, n);
  }
}

/** Energy of a window's values beyond a complex straight line {1, t}. */
function variedEnergy(grid: CoarseGrid, start: number, n: number): number {
  const end = start + n;
  const s0 = stretchSum(grid.sumRe, start, end);
  const s1 = stretchSum(grid.sumIm, start, end);
  const centre = start + (n - 1) / 2;
  const t0 = stretchSum(grid.sumIndexRe, start, end) - centre * s0;
  const t1 = stretchSum(grid.sumIndexIm, start, end) - centre * s1;
  const tt = (n * (n * n - 1)) / 12;
  const energy = stretchSum(grid.sumEnergy, start, end);
  return Math.max(0, energy - (s0 * s0 + s1 * s1) / n - (t0 * t0 + t1 * t1) / tt);
}

const statisticOf = (gain: number, varied: number, noise: number, n: number): number =>
  gain / (noise + (3 * Math.max(0, varied - gain)) / Math.max(1, n - 3) + 1e-30);

/**
 * One template at one place, in full.
 * @param middle  cell of the grid
 * @param fit  is filled, but for what the statistic usually is
 */
export function fitPassage(
  grid: CoarseGrid,
  template: PassageTemplate,
  direction: SlideDirection,
  middle: number,
  fit: Reused<PassageFit>,
): void {
  const n = template.re.length;
  const start = middle - template.before;
  let g0 = 0;
  let g1 = 0;
  for (let j = 0; j < n; j += 1) {
    const x = grid.re[start + j];
    const y = grid.im[start + j];
    const hx = template.re[j];
    const hy = direction * template.im[j];
    g0 += hx * x + hy * y;
    g1 += hx * y - hy * x;
  }
  const gain = g0 * g0 + g1 * g1;
  const varied = variedEnergy(grid, start, n);
  const noiseMeanSquare = stretchSum(grid.sumNoise, start, start + n) / n;
  fit.template = template;
  fit.direction = direction;
  fit.middle = grid.middleOf(middle);
  fit.gain = gain;
  fit.residual = Math.max(0, varied - gain);
  fit.noiseMeanSquare = noiseMeanSquare;
  fit.statistic = statisticOf(gain, varied, noiseMeanSquare, n);
}

/** Room for a fit. */
export const blankFit = (template: PassageTemplate): Reused<PassageFit> => ({
  template,
  direction: 1,
  middle: NaN,
  gain: NaN,
  residual: NaN,
  noiseMeanSquare: NaN,
  statistic: NaN,
  usual: NaN,
});

/**
 * The next place from `from` on whose value is at least `threshold` and higher than at both neighbours.
 * @param count  values that count
 * @returns -1 where there is none
 */
export function nextMaximum(values: Float64Array, from: number, count: number, threshold: number): number {
  for (let i = Math.max(1, from); i + 1 < count; i += 1) {
    const value = values[i];
    if (value >= threshold && value >= values[i - 1] && value > values[i + 1]) {
      return i;
    }
  }
  return -1;
}

/**
 * Upper quartile of the first `count` values; all are put in order, what doesn't count last.
 * @returns 0 for no values
 */
export function upperQuartile(values: Float64Array, count: number): number {
  if (count === 0) return 0;
  values.fill(Infinity, count).sort();
  return values[Math.floor(0.75 * count)];
}

/** At most 450 values. */
const around = new Float64Array(512);

/** Upper quartile of the statistic around one fit, the fit's own neighbourhood left out. */
function usualStatistic(
  statistics: Float64Array,
  at: number,
  template: PassageTemplate,
  rateHz: number,
): number {
  const own = Math.ceil(((3 * template.shape.halfWidthS + 0.2) * rateHz) / template.step);
  const reach = own + Math.ceil((AROUND_S * rateHz) / template.step);
  const stride = Math.max(1, Math.round(reach / 150));
  let count = 0;
  for (let i = Math.max(0, at - reach); i <= Math.min(statistics.length - 1, at + reach); i += stride) {
    if (Math.abs(i - at) <= own) continue;
    around[count] = statistics[i];
    count += 1;
  }
  return upperQuartile(around, count);
}

/**
 * Thins fits out, in place: of those of nearly the same width and place only the best stays. Shapes of different width
 * at one place all stay, for the evidence to choose between.
 * @param fits  the first `count` count; afterwards those that stay come first, the best one foremost
 * @returns how many stay
 */
export function keepDistinct(fits: PassageFit[], count: number, rateHz: number): number {
  let kept = 0;
  let end = count;
  while (kept < end) {
    let best = kept;
    for (let i = kept + 1; i < end; i += 1) {
      if (fits[i].statistic > fits[best].statistic) best = i;
    }
    swap(fits, kept, best);
    const fit = fits[kept];
    kept += 1;
    for (let i = kept; i < end;) {
      if (areApart(fits[i], fit, rateHz)) i += 1;
      else {
        end -= 1;
        swap(fits, i, end);
      }
    }
  }
  return kept;
}

function swap(fits: PassageFit[], i: number, j: number): void {
  const fit = fits[i];
  fits[i] = fits[j];
  fits[j] = fit;
}

function areApart(fit: PassageFit, other: PassageFit, rateHz: number): boolean {
  const { halfWidthS } = fit.template.shape;
  const apartS = Math.abs(fit.middle - other.middle) / rateHz;
  const ratio = other.template.shape.halfWidthS / halfWidthS;
  return ratio > 1.6 || ratio < 1 / 1.6 || apartS > 0.05 + Math.max(1, ratio) * halfWidthS;
}
