import { stretchSum } from '../toneView.ts';
import type { ToneView } from '../toneView.ts';

/**
 * A view's values averaged over `step` neighbours each, with running sums, so that a straight line's share over any
 * window is known at once. Cell c begins at a multiple of `step` of the series, wherever the view begins.
 */
export class CoarseGrid {
  readonly step: number;
  re = new Float64Array(0);
  im = new Float64Array(0);
  /** Running sums, one longer than the cells: of values, of cell index × value, of |value|², of the mean |noise|². */
  sumRe = new Float64Array(1);
  sumIm = new Float64Array(1);
  sumIndexRe = new Float64Array(1);
  sumIndexIm = new Float64Array(1);
  sumEnergy = new Float64Array(1);
  sumNoise = new Float64Array(1);
  #length = 0;
  #offset = 0;

  constructor(step: number) {
    this.step = step;
  }

  /** Number of cells. */
  get length(): number {
    return this.#length;
  }

  /** Middle of a cell as an index into the view (falls between values where step is even). */
  middleOf(cell: number): number {
    return this.#offset + (cell + 0.5) * this.step - 0.5;
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
    this.#length = count;
    this.#offset = firstValue(view, step) + from * step;
    if (this.re.length < count) this.#grow(2 * count);
    const bandwidthHz = Math.min(view.bandwidthHz, view.rateHz / step);
    const { sums } = view;
    let sumRe = 0;
    let sumIm = 0;
    let sumIndexRe = 0;
    let sumIndexIm = 0;
    let sumEnergy = 0;
    let sumNoise = 0;
    for (let cell = 0; cell < count; cell += 1) {
      const begin = this.#offset + cell * step;
      const x = stretchSum(sums.re, begin, begin + step) / step;
      const y = stretchSum(sums.im, begin, begin + step) / step;
      this.re[cell] = x;
      this.im[cell] = y;
      sumRe += x;
      sumIm += y;
      sumIndexRe += cell * x;
      sumIndexIm += cell * y;
      sumEnergy += x * x + y * y;
      sumNoise += (stretchSum(sums.noiseDensity, begin, begin + step) / step) * bandwidthHz;
      this.sumRe[cell + 1] = sumRe;
      this.sumIm[cell + 1] = sumIm;
      this.sumIndexRe[cell + 1] = sumIndexRe;
      this.sumIndexIm[cell + 1] = sumIndexIm;
      this.sumEnergy[cell + 1] = sumEnergy;
      this.sumNoise[cell + 1] = sumNoise;
    }
  }

  #grow(length: number): void {
    this.re = new Float64Array(length);
    this.im = new Float64Array(length);
    this.sumRe = new Float64Array(length + 1);
    this.sumIm = new Float64Array(length + 1);
    this.sumIndexRe = new Float64Array(length + 1);
    this.sumIndexIm = new Float64Array(length + 1);
    this.sumEnergy = new Float64Array(length + 1);
    this.sumNoise = new Float64Array(length + 1);
  }
}

/** Index into the view of the first value of its first cell. */
const firstValue = (view: ToneView, step: number): number => (step - (view.firstIndex % step)) % step;
