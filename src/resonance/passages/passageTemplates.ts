import { sweptResonator } from '../sweptResonator.ts';
import type { PassageShape } from '../sweptResonator.ts';

/** +1: the column grows longer; −1: shorter, which is the complex conjugate of the same shape. */
export type SlideDirection = 1 | -1;

/** The shape of a growing column on its own time grid, made orthogonal to the nuisance terms {1, t} and scaled to unit energy. */
export interface PassageTemplate {
  readonly shape: PassageShape;
  /** Narrow values that are averaged to one grid value. */
  readonly step: number;
  /** Grid values before and after the middle; the window holds before + 1 + after values. */
  readonly before: number;
  readonly after: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Windows of templates that differ in their look-ahead alone. */
interface TemplateWindows {
  /** Narrow values a second, and how many are averaged to one grid value. */
  readonly rateHz: number;
  readonly step: number;
  /** How far they reach before the middle, s, and each of them after it. */
  readonly beforeS: number;
  readonly aftersS: readonly number[];
}

/** The templates of one shape. It is swept once, as far as the longest window reaches. */
function templatesOf(
  shape: PassageShape,
  { rateHz, step, beforeS, aftersS }: TemplateWindows,
): PassageTemplate[] {
  const gridS = step / rateHz;
  const before = Math.max(4, Math.round(beforeS / gridS));
  const afters = aftersS.map((afterS) => Math.max(2, Math.round(afterS / gridS)));
  const length = before + 1 + Math.max(...afters);
  const path = sweptResonator(
    shape,
    Array.from({ length }, (_, i) => (i - before) * gridS),
    Math.min(0.002, shape.halfWidthS / 15),
  );
  return afters.map((after) => {
    const n = before + 1 + after;
    return { shape, step, before, after, ...normalised(path.re.slice(0, n), path.im.slice(0, n)) };
  });
}

/** Made orthogonal to {1, t} and scaled to unit energy. */
function normalised(re: readonly number[], im: readonly number[]): Pick<PassageTemplate, 're' | 'im'> {
  const n = re.length;
  const centre = (n - 1) / 2;
  const tt = (n * (n * n - 1)) / 12;
  let [m0, m1, s0, s1] = [0, 0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    m0 += re[i] / n;
    m1 += im[i] / n;
    s0 += ((i - centre) * re[i]) / tt;
    s1 += ((i - centre) * im[i]) / tt;
  }
  const x = Float64Array.from(re, (value, i) => value - m0 - s0 * (i - centre));
  const y = Float64Array.from(im, (value, i) => value - m1 - s1 * (i - centre));
  let energy = 0;
  for (let i = 0; i < n; i += 1) energy += x[i] ** 2 + y[i] ** 2;
  const norm = Math.sqrt(energy);
  return { re: x.map((value) => value / norm), im: y.map((value) => value / norm) };
}

/** Half widths looked for, s, with the number of narrow values averaged for each. */
const LADDER: readonly (readonly [number, number])[] = [
  [0.03, 1],
  [0.045, 1],
  [0.065, 1],
  [0.09, 2],
  [0.13, 2],
  [0.18, 4],
  [0.25, 4],
  [0.36, 8],
  [0.5, 8],
  [0.72, 16],
  [1.0, 16],
  [1.5, 32],
];

/** Which templates a detector matches: what its windows and shapes come from. */
export interface BankSettings {
  /** Look-ahead: how long the detector waits after a shape's middle, s, from the half width. */
  readonly lookAheadS: (halfWidthS: number) => number;
  /** Ring-up rates in which shapes of this half width are looked for, 1/s. */
  readonly ringUpRates: (halfWidthS: number) => readonly number[];
}

const TYPICAL_RATE = 20;
/** One ring-up rate for all: what is judged early must be beyond doubt anyhow. */
export const oneRingUp = (): readonly number[] => [TYPICAL_RATE];
/**
 * A slow slide follows the steady state, whatever the ring-up; only the fastest shows it. Two rates up to 0.09 s found
 * no more, one rate throughout lost 1 % of the passages.
 */
export const ringUpsOfFastSlides = (halfWidthS: number): readonly number[] =>
  halfWidthS < 0.05 ? [14, 32] : [TYPICAL_RATE];

/** A bank of matched filters: all shapes that are looked for, each in a window for each of the settings that want it. */
export function templateBank(rateHz: number, all: readonly BankSettings[]): readonly PassageTemplate[] {
  return LADDER.flatMap(([halfWidthS, step]) => {
    const rates = new Set(all.flatMap(({ ringUpRates }) => ringUpRates(halfWidthS)));
    return [...rates].flatMap((ringUpRate) => {
      const own = all.filter(({ ringUpRates }) => ringUpRates(halfWidthS).includes(ringUpRate));
      const aftersS = own.map(({ lookAheadS }) => lookAheadS(halfWidthS));
      const beforeS = 4 * halfWidthS + 0.03;
      return templatesOf({ halfWidthS, ringUpRate }, { rateHz, step, beforeS, aftersS });
    });
  });
}
