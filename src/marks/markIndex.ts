import type { Mark } from './mark.ts';

/**
 * What each mark of one list is to the others, worked out once for all of them: which repeat which, and by what number
 * a person knows them. The work grows with the list's length.
 */
export class MarkIndex {
  /** Marks that stand for themselves, oldest first: each a resonance of its own. */
  readonly own: readonly Mark[];
  private readonly byId = new Map<string, Mark>();
  /** The mark behind each one: itself, the one that it repeats, or null where repeats lead in a circle. */
  private readonly behind = new Map<Mark, Mark | null>();
  private readonly numbers = new Map<Mark, number>();
  private readonly repeats = new Map<Mark, Mark[]>();

  /**
   * @param marks  oldest first
   * @param gone  deleted ones: they keep their numbers, so that those of the others don't move
   */
  constructor(marks: readonly Mark[], gone: readonly Mark[] = []) {
    for (const mark of marks) if (!this.byId.has(mark.id)) this.byId.set(mark.id, mark);
    const own: Mark[] = [];
    const goneAt = gone.length === 0 ? [] : new MarkIndex(gone).own.map(({ createdAt }) => createdAt).sort();
    for (const mark of marks) {
      const repeated = this.repeated(mark);
      if (repeated === null) {
        own.push(mark);
        this.numbers.set(mark, own.length + countBefore(goneAt, mark.createdAt));
        continue;
      }
      const there = this.repeats.get(repeated);
      if (there === undefined) this.repeats.set(repeated, [mark]);
      else there.push(mark);
    }
    this.own = own;
  }

  /** The mark of this id; null where there is none. */
  find(id: string): Mark | null {
    return this.byId.get(id) ?? null;
  }

  /**
   * The mark that this one repeats; null where it stands for itself, as every mark does that has a length of its own or
   * whose repeats lead in a circle. A repeat of a repeat is one of the mark behind both.
   * @param mark  need not be of the list
   */
  repeated(mark: Mark): Mark | null {
    const path: Mark[] = [];
    let last = mark;
    let found: Mark | null | undefined = this.behind.get(mark);
    while (found === undefined) {
      path.push(last);
      // A mark that is met again before its own is known leads in a circle.
      this.behind.set(last, null);
      const { repeatOf, lengthM } = last;
      const next =
        lengthM !== null || repeatOf === undefined || repeatOf === null ? undefined : this.byId.get(repeatOf);
      if (next === undefined) found = last;
      else {
        last = next;
        found = this.behind.get(next);
      }
    }
    for (const passed of path) this.behind.set(passed, found);
    return found === mark ? null : found;
  }

  /** Repeats of one mark, oldest first. */
  repeatsOf(mark: Mark): readonly Mark[] {
    return this.repeats.get(mark) ?? [];
  }

  /** A mark's number, from 1; a repeat goes by that of its mark. 0 where there is no such mark. */
  numberOf(id: string): number {
    const mark = this.byId.get(id);
    return mark === undefined ? 0 : (this.numbers.get(this.repeated(mark) ?? mark) ?? 0);
  }
}

/** How many of these times, in their order, lie before one. */
function countBefore(times: readonly string[], time: string): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle] < time) low = middle + 1;
    else high = middle;
  }
  return low;
}
