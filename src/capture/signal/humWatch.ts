import { SUMMED_FRAMES } from './sampleTally.ts';

const MAINS_HZ = [50, 60] as const;
/** Level from which hum is worth a word, dB re a sine of amplitude 1. */
const LOUD_DB = -40;
/** How far a mains line stands out of what lies beside it, dB. */
const OUT_DB = 12;
/** Seconds of hum before it counts, and how many of the last are kept. */
const LEAST_S = 3;
const KEPT_S = 8;

/** Mains hum that is loud enough to matter. */
export interface Hum {
  readonly mainsHz: 50 | 60;
  /** Of the loudest of its first three lines. */
  readonly levelDb: number;
}

/** Searches each second for lines at 50 or 60 Hz and their next two multiples. */
export class HumWatch {
  private readonly rateHz: number;
  private readonly values: Float64Array;
  private readonly window: Float64Array;
  private readonly seen: (Hum | null)[] = [];
  private filled = 0;

  constructor(sampleRateHz: number) {
    this.rateHz = sampleRateHz / SUMMED_FRAMES;
    this.values = new Float64Array(Math.round(this.rateHz));
    const turn = (2 * Math.PI) / this.values.length;
    this.window = this.values.map((_, i) => 0.5 - 0.5 * Math.cos(turn * i));
  }

  /** @param means  of `SUMMED_FRAMES` samples each */
  take(means: Float64Array): void {
    for (const mean of means) {
      this.values[this.filled] = mean * this.window[this.filled];
      this.filled += 1;
      if (this.filled === this.values.length) this.takeSecond();
    }
  }

  /** Notes that sound was lost here. */
  interrupt(): void {
    this.filled = 0;
  }

  /** The hum of the last seconds; null where there is none that matters. */
  get hum(): Hum | null {
    const heard = this.seen.filter((one) => one !== null);
    if (heard.length < LEAST_S || heard.length < 0.7 * this.seen.length) return null;
    return heard.sort((a, b) => a.levelDb - b.levelDb)[heard.length >> 1];
  }

  private takeSecond(): void {
    this.filled = 0;
    let loudest: Hum | null = null;
    for (const mainsHz of MAINS_HZ) {
      for (let order = 1; order <= 3; order += 1) {
        const hz = order * mainsHz;
        const levelDb = this.lineDb(hz);
        // A quiet line needs no comparison with what lies beside it.
        if (levelDb < LOUD_DB) continue;
        const besideDb = Math.max(this.lineDb(hz - 5), this.lineDb(hz + 5));
        if (levelDb < besideDb + OUT_DB) continue;
        if (loudest === null || levelDb > loudest.levelDb) loudest = { mainsHz, levelDb };
      }
    }
    this.seen.push(loudest);
    if (this.seen.length > KEPT_S) this.seen.shift();
  }

  /** Level of one line over the second, Hann window. @see Goertzel, American Mathematical Monthly 65 (1958), 34 */
  private lineDb(hz: number): number {
    const values = this.values;
    const n = values.length;
    const turn = (2 * Math.PI * hz) / this.rateHz;
    const factor = 2 * Math.cos(turn);
    let last = 0;
    let lastButOne = 0;
    for (let i = 0; i < n; i += 1) {
      const now = values[i] + factor * last - lastButOne;
      lastButOne = last;
      last = now;
    }
    const power = last * last + lastButOne * lastButOne - factor * last * lastButOne;
    // A sine of amplitude A gives A n / 4 through the Hann window.
    return 10 * Math.log10((16 * power) / (n * n) + 1e-20);
  }
}
