import { rangeSum } from '../../numeric/prefixSum.ts';
import type { ToneView } from '../toneView.ts';

/** A complex straight line's share of a window's energy and the noise there. */
export interface WindowEnergy {
  /** Energy beyond the nuisance terms {1, t}. */
  readonly beyondLine: number;
  /** Mean |noise|² of one cell. */
  readonly noiseMeanSquare: number;
}

/**
 * A view decimated: cells of `step` neighbours' means, with prefix sums, so that a straight line's share of any window
 * is known at once. Cell c begins at a multiple of `step` of the series, wherever the view begins. `fill` replaces all
 * that was there.
 */
export class DecimatedView {
  readonly step: number;
  private rePart = new Float64Array(0);
  private imPart = new Float64Array(0);
  private sums = emptySums(0);
  private offset = 0;

  constructor(step: number) {
    this.step = step;
  }

  /** The cells' values; longer than the cells that are filled. */
  get re(): Float64Array {
    return this.rePart;
  }

  get im(): Float64Array {
    return this.imPart;
  }

  /** Middle of a cell as an index into the view (falls between values where step is even). */
  middleOf(cell: number): number {
    return this.offset + (cell + 0.5) * this.step - 0.5;
  }

  /** How many cells a view holds; values at its end that fill no cell are left. */
  cellsIn(view: ToneView): number {
    return Math.max(0, Math.floor((view.length - firstValue(view, this.step)) / this.step));
  }

  /**
   * Takes cells of a view in.
   * @param from  first cell of the view that is taken, 0 or more
   * @param count  how many; from + count at most cellsIn(view)
   */
  fill(view: ToneView, from: number, count: number): void {
    const { step } = this;
    const offset = firstValue(view, step) + from * step;
    this.offset = offset;
    if (this.rePart.length < count) this.allocate(2 * count);
    const bandwidthHz = Math.min(view.bandwidthHz, view.rateHz / step);
    const sums = this.sums;
    let [re, im, indexRe, indexIm, energy, noise] = [0, 0, 0, 0, 0, 0];
    for (let cell = 0; cell < count; cell += 1) {
      const begin = offset + cell * step;
      const x = rangeSum(view.sums.re, begin, begin + step) / step;
      const y = rangeSum(view.sums.im, begin, begin + step) / step;
      this.rePart[cell] = x;
      this.imPart[cell] = y;
      re += x;
      im += y;
      indexRe += cell * x;
      indexIm += cell * y;
      energy += x * x + y * y;
      noise += (rangeSum(view.sums.noiseDensity, begin, begin + step) / step) * bandwidthHz;
      sums.re[cell + 1] = re;
      sums.im[cell + 1] = im;
      sums.indexRe[cell + 1] = indexRe;
      sums.indexIm[cell + 1] = indexIm;
      sums.energy[cell + 1] = energy;
      sums.noise[cell + 1] = noise;
    }
  }

  /** Of the cells [start, start + n). */
  windowEnergy(start: number, n: number): WindowEnergy {
    const sums = this.sums;
    const end = start + n;
    const s0 = rangeSum(sums.re, start, end);
    const s1 = rangeSum(sums.im, start, end);
    const centre = start + (n - 1) / 2;
    const t0 = rangeSum(sums.indexRe, start, end) - centre * s0;
    const t1 = rangeSum(sums.indexIm, start, end) - centre * s1;
    const tt = (n * (n * n - 1)) / 12;
    const energy = rangeSum(sums.energy, start, end);
    return {
      beyondLine: Math.max(0, energy - (s0 * s0 + s1 * s1) / n - (t0 * t0 + t1 * t1) / tt),
      noiseMeanSquare: rangeSum(sums.noise, start, end) / n,
    };
  }

  private allocate(length: number): void {
    this.rePart = new Float64Array(length);
    this.imPart = new Float64Array(length);
    this.sums = emptySums(length);
  }
}

/** Prefix sums of so many cells: of values, of cell index × value, of |value|², of the mean |noise|². */
const emptySums = (length: number) => ({
  re: new Float64Array(length + 1),
  im: new Float64Array(length + 1),
  indexRe: new Float64Array(length + 1),
  indexIm: new Float64Array(length + 1),
  energy: new Float64Array(length + 1),
  noise: new Float64Array(length + 1),
});

/** Index into the view of the first value of its first cell. */
const firstValue = (view: ToneView, step: number): number => (step - (view.firstIndex % step)) % step;
