import { quickselect } from '../../numeric/quickselect.ts';
import type { PassageTemplate } from './passageTemplates.ts';

/**
 * What a template's statistic reaches by chance around a place, through hand and room: the upper quartile of its values
 * in the seconds around, the place's own neighbourhood left out (ordered-statistic CFAR with guard cells; Rohling 1983,
 * IEEE Trans. Aerosp. Electron. Syst. 19, 608).
 */
const QUANTILE = 0.75;
/** How far around a place the background is taken, s. */
const REFERENCE_S = 6;
/** About so many values on either side are enough. */
const SIDE_VALUES = 150;

/** A passage's own neighbourhood, s to either side. */
const guardS = (halfWidthS: number): number => 3 * halfWidthS + 0.2;

/** 0 for no values. @param values  the first `count` count; they are reordered */
const quantile = (values: Float64Array, count: number): number =>
  count === 0 ? 0 : quickselect(values, Math.floor(QUANTILE * count), count);

/**
 * The background where values on both sides are at hand.
 * @param statistics  of a template, one a cell; the first `count` count
 * @param at  the place
 * @param rateHz  narrow values a second
 */
export function backgroundAround(
  statistics: Float64Array,
  count: number,
  at: number,
  { shape, step }: PassageTemplate,
  rateHz: number,
): number {
  const guard = Math.ceil((guardS(shape.halfWidthS) * rateHz) / step);
  const reach = guard + Math.ceil((REFERENCE_S * rateHz) / step);
  const stride = Math.max(1, Math.round(reach / SIDE_VALUES));
  const around = new Float64Array(Math.floor((2 * reach) / stride) + 1);
  let filled = 0;
  for (let i = Math.max(0, at - reach); i <= Math.min(count - 1, at + reach); i += stride) {
    if (Math.abs(i - at) <= guard) continue;
    around[filled] = statistics[i];
    filled += 1;
  }
  return quantile(around, filled);
}

/** The background live: of the best statistic of each step before the newest ones. */
export class RecentBackground {
  private readonly guard: number;
  /** A ring; the newest stands before `next`. */
  private readonly values: Float64Array;
  private next = 0;
  private filled = 0;

  constructor(halfWidthS: number, stepsPerS: number) {
    this.guard = Math.ceil(guardS(halfWidthS) * stepsPerS);
    this.values = new Float64Array(this.guard + REFERENCE_S * stepsPerS);
  }

  /** Takes in one step. @param statistics  its values; the first `count` are used */
  push(statistics: Float64Array, count: number): void {
    let most = 0;
    for (let i = 0; i < count; i += 1) most = Math.max(most, statistics[i]);
    this.values[this.next] = most;
    this.next = (this.next + 1) % this.values.length;
    this.filled = Math.min(this.filled + 1, this.values.length);
  }

  /** 0 where nothing is far enough back yet. */
  get background(): number {
    const length = this.values.length;
    const count = Math.max(0, this.filled - this.guard);
    const oldest = this.next - this.filled + 2 * length;
    const before = new Float64Array(count);
    for (let i = 0; i < count; i += 1) before[i] = this.values[(oldest + i) % length];
    return quantile(before, count);
  }
}
