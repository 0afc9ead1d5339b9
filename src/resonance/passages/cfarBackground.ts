import { AROUND_S, upperQuartile } from './matchedFilter.ts';

/** For one shape, the best statistic of each look: what hand and room reach by chance. */
export class RecentBest {
  readonly #own: number;
  /** A ring; the newest stands before #next. */
  readonly #values: Float64Array;
  readonly #scratch: Float64Array;
  #next = 0;
  #filled = 0;
  #usual = 0;

  /** @param own  how many of the newest looks are a passage's own neighbourhood and don't count */
  constructor(own: number, looksPerS: number) {
    this.#own = own;
    this.#values = new Float64Array(own + AROUND_S * looksPerS);
    this.#scratch = new Float64Array(this.#values.length);
  }

  /** Takes in one look. @param statistics  its values; the first `count` are used */
  push(statistics: Float64Array, count: number): void {
    let most = 0;
    for (let i = 0; i < count; i += 1) most = Math.max(most, statistics[i]);
    this.#values[this.#next] = most;
    this.#next = (this.#next + 1) % this.#values.length;
    this.#filled = Math.min(this.#filled + 1, this.#values.length);
  }

  /** Upper quartile over the seconds before the newest looks, as last found; 0 where there were none yet. */
  get usual(): number {
    return this.#usual;
  }

  /** Brings `usual` up to date. */
  findUsual(): void {
    const length = this.#values.length;
    const count = Math.max(0, this.#filled - this.#own);
    for (let i = 0; i < count; i += 1) {
      const at = (this.#next - this.#filled + i + 2 * length) % length;
      this.#scratch[i] = this.#values[at];
    }
    this.#usual = upperQuartile(this.#scratch, count);
  }
}
