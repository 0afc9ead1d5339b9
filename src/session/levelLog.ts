import type { LevelStretch } from '../marks/mark.ts';
import type { LevelPoint } from './listeningTypes.ts';

/** Points that room is made for at first: about 50 s. */
const FIRST_ROOM = 1024;

/** The level trace of a run in few bytes: of all of it, or, for a run that may last for hours, of its last minutes. */
export class LevelLog {
  private times = new Float64Array(FIRST_ROOM);
  private tone = new Float64Array(FIRST_ROOM);
  private room = new Float64Array(FIRST_ROOM);
  private count = 0;

  /** @param mostS  of the trace are kept at least, s; older points may go */
  constructor(private readonly mostS = Infinity) {}

  /** Adds points in order of time. A time that does not grow begins a new trace. */
  add(points: readonly LevelPoint[]): void {
    for (const point of points) {
      const last = this.latestS;
      if (last !== null && point.timeS <= last) this.count = 0;
      if (this.count === this.times.length) this.makeRoom(point.timeS);
      this.times[this.count] = point.timeS;
      // Only inside: a typed array holds no null.
      this.tone[this.count] = point.toneDb ?? Number.NaN;
      this.room[this.count] = point.roomDb;
      this.count += 1;
    }
  }

  /** Time of the newest point, s; null before the first. */
  get latestS(): number | null {
    return this.count === 0 ? null : (this.times[this.count - 1] ?? null);
  }

  /**
   * The points between two times of the source, s, both included.
   * @returns null where there are fewer than two
   */
  stretch(fromS: number, toS: number): LevelStretch | null {
    const from = this.firstAtOrAfter(fromS);
    let to = this.firstAtOrAfter(toS);
    if (to < this.count && this.times[to] === toS) to += 1;
    if (to - from < 2) return null;
    const startS = this.times[from] ?? 0;
    return {
      startS,
      stepS: ((this.times[to - 1] ?? 0) - startS) / (to - from - 1),
      toneDb: Array.from(this.tone.subarray(from, to), (level) => (Number.isNaN(level) ? null : level)),
      roomDb: Array.from(this.room.subarray(from, to)),
    };
  }

  private firstAtOrAfter(timeS: number): number {
    let low = 0;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.times[middle] ?? 0) < timeS) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private makeRoom(nowS: number): void {
    const old = this.firstAtOrAfter(nowS - this.mostS);
    if (old < this.count / 2) {
      this.grow();
      return;
    }
    for (const name of ['times', 'tone', 'room'] as const) this[name].copyWithin(0, old, this.count);
    this.count -= old;
  }

  private grow(): void {
    for (const name of ['times', 'tone', 'room'] as const) {
      const larger = new Float64Array(2 * this[name].length);
      larger.set(this[name]);
      this[name] = larger;
    }
  }
}
