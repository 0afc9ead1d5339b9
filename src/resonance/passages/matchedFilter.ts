import type { DecimatedView, WindowEnergy } from './decimatedView.ts';
import type { PassageTemplate, SlideDirection } from './passageTemplates.ts';

/**
 * A template where it matches best, and how well it does there.
 *
 * The matched filter is a generalised likelihood ratio test with nuisance terms: least squares of {1, t, shape} with
 * complex coefficients, {1, t} standing for the direct sound and the hand. Its statistic is the shape's energy over
 * the noise and what the fit leaves.
 */
export interface TemplateMatch {
  readonly template: PassageTemplate;
  readonly direction: SlideDirection;
  /** Middle of the shape, index into the view (may fall between values). */
  readonly middle: number;
  /** Energy that the shape explains beyond {1, t}, decimated values' mean squares. */
  readonly explained: number;
  /** Energy that the same shape explains with its phase turning the other way. */
  readonly opposite: number;
  /** Energy that is left. */
  readonly residual: number;
  /** Mean |noise|² of one decimated value over the window. */
  readonly noiseMeanSquare: number;
  /** explained / (noise + 3 × residual per value): large where the shape stands out of noise and misfit alike. */
  readonly statistic: number;
  /** What the same template's statistic reaches by chance in the seconds around, see cfarBackground.ts. */
  readonly background: number;
}

/** Statistics of one template at middles that follow each other, the column growing longer or shorter. */
export interface StatisticRow {
  readonly longer: Float64Array;
  readonly shorter: Float64Array;
}

export const emptyRow = (length: number): StatisticRow => ({
  longer: new Float64Array(length),
  shorter: new Float64Array(length),
});

/** Middles that follow each other: cells of a decimated view, the first with at least `before` cells before it. */
export interface Middles {
  readonly first: number;
  readonly count: number;
}

/**
 * Statistics of one template at some middles, both directions.
 * @param row  is filled
 * @param at  where in the row the first one is written
 */
export function fillStatistics(
  row: StatisticRow,
  cells: DecimatedView,
  template: PassageTemplate,
  { first, count }: Middles,
  at = 0,
): void {
  const n = template.re.length;
  const { re: shapeRe, im: shapeIm } = template;
  const { re, im } = cells;
  for (let i = 0; i < count; i += 1) {
    const start = first + i - template.before;
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
    const energy = cells.windowEnergy(start, n);
    row.longer[at + i] = statisticOf((a + b) ** 2 + (c - d) ** 2, energy, n);
    row.shorter[at + i] = statisticOf((a - b) ** 2 + (c + d) ** 2, energy, n);
  }
}

const statisticOf = (explained: number, { beyondLine, noiseMeanSquare }: WindowEnergy, n: number): number =>
  explained / (noiseMeanSquare + (3 * Math.max(0, beyondLine - explained)) / Math.max(1, n - 3) + 1e-30);

/** Where a template's statistic has a maximum, and what it usually is around there. */
export interface Maximum {
  readonly template: PassageTemplate;
  readonly direction: SlideDirection;
  /** Cell of the decimated view. */
  readonly middle: number;
  readonly background: number;
}

/** One template at one place, in full. */
export function matchAt(
  cells: DecimatedView,
  { template, direction, middle, background }: Maximum,
): TemplateMatch {
  const n = template.re.length;
  const start = middle - template.before;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let j = 0; j < n; j += 1) {
    const x = cells.re[start + j];
    const y = cells.im[start + j];
    const hx = template.re[j];
    const hy = direction * template.im[j];
    a += hx * x;
    b += hy * y;
    c += hx * y;
    d += hy * x;
  }
  const explained = (a + b) ** 2 + (c - d) ** 2;
  const energy = cells.windowEnergy(start, n);
  return {
    template,
    direction,
    middle: cells.middleOf(middle),
    explained,
    opposite: (a - b) ** 2 + (c + d) ** 2,
    residual: Math.max(0, energy.beyondLine - explained),
    noiseMeanSquare: energy.noiseMeanSquare,
    statistic: statisticOf(explained, energy, n),
    background,
  };
}

/** Places whose value is at least `threshold` and higher than at both neighbours; of the first `count` values. */
export function localMaxima(values: Float64Array, count: number, threshold: number): number[] {
  const places: number[] = [];
  for (let i = 1; i + 1 < count; i += 1) {
    const value = values[i];
    if (value >= threshold && value >= values[i - 1] && value > values[i + 1]) places.push(i);
  }
  return places;
}

/**
 * Non-maximum suppression: of matches of nearly the same width and place only the best stays. Shapes of different width
 * at one place all stay, for the features to choose between.
 * @returns those that stay, the best one first
 */
export function suppressNonMaxima(matches: readonly TemplateMatch[], rateHz: number): TemplateMatch[] {
  const kept: TemplateMatch[] = [];
  for (const match of [...matches].sort((a, b) => b.statistic - a.statistic)) {
    if (kept.every((other) => areApart(match, other, rateHz))) kept.push(match);
  }
  return kept;
}

function areApart(match: TemplateMatch, other: TemplateMatch, rateHz: number): boolean {
  const { halfWidthS } = match.template.shape;
  const apartS = Math.abs(match.middle - other.middle) / rateHz;
  const ratio = other.template.shape.halfWidthS / halfWidthS;
  return ratio > 1.6 || ratio < 1 / 1.6 || apartS > 0.05 + Math.max(1, ratio) * halfWidthS;
}
