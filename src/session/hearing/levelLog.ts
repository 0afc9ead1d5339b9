import type { LevelStretch } from '../../marks/mark.ts';
import { doubled } from '../../numeric/doubled.ts';
import type { LevelPoint } from './listeningTypes.ts';

/** Points that are allocated for at first: about 50 s. */
const FIRST_CAPACITY = 1024;

/** The level trace of a run in few bytes: of all of it, or, for a run that may last for hours, of its last minutes. */
export class LevelLog {
  private readonly mostS: number;
  private timesS = new Float64Array(FIRST_CAPACITY);
  /** NaN where no tone was heard: a typed array holds no null. */
  private toneDb = new Float64Array(FIRST_CAPACITY);
  private roomDb = new Float64Array(FIRST_CAPACITY);
  private count = 0;

  /** @param mostS  of the trace are kept at least, s; older points may go */
  constructor(mostS = Infinity) {
    this.mostS = mostS;
  }

  /** Adds points in order of time. A time that does not grow begins a new trace. */
  add(points: readonly LevelPoint[]): void {
    for (const point of points) {
      const last = this.latestS;
      if (last !== null && point.timeS <= last) this.count = 0;
      if (this.count === this.timesS.length) this.dropOldOrGrow(point.timeS);
      this.timesS[this.count] = point.timeS;
      this.toneDb[this.count] = point.toneDb ?? Number.NaN;
      this.roomDb[this.count] = point.roomDb;
      this.count += 1;
    }
  }

  /** Time of the newest point, s; null before the first. */
  get latestS(): number | null {
    return this.count === 0 ? null : this.timesS[this.count - 1];
  }

  /**
   * The points between two times of the source, s, both included.
   * @returns null where there are fewer than two
   */
  stretch(fromS: number, toS: number): LevelStretch | null {
    const from = this.firstAtOrAfter(fromS);
    let to = this.firstAtOrAfter(toS);
    if (to < this.count && this.timesS[to] === toS) to += 1;
    if (to - from < 2) return null;
    const startS = this.timesS[from];
    return {
      startS,
      stepS: (this.timesS[to - 1] - startS) / (to - from - 1),
      toneDb: Array.from(this.toneDb.subarray(from, to), (level) => (Number.isNaN(level) ? null : level)),
      roomDb: Array.from(this.roomDb.subarray(from, to)),
    };
  }

  private firstAtOrAfter(timeS: number): number {
    let low = 0;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.timesS[middle] < timeS) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private dropOldOrGrow(nowS: number): void {
    const old = this.firstAtOrAfter(nowS - this.mostS);
    if (old < this.count / 2) {
      this.timesS = doubled(this.timesS);
      this.toneDb = doubled(this.toneDb);
      this.roomDb = doubled(this.roomDb);
      return;
    }
    for (const values of [this.timesS, this.toneDb, this.roomDb]) values.copyWithin(0, old, this.count);
    this.count -= old;
  }
}
