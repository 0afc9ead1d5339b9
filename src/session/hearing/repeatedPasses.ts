import type { Resonance } from './listeningTypes.ts';

/** A flag of this run and the mark that it made. */
interface Flag {
  readonly resonance: Resonance;
  readonly markId: string;
}

/**
 * Which flags of one run are the same resonance passed again. Along a tube one comes back through a resonance before
 * any other can be met the other way round, so a flag whose phase turns against the one before it, within one sounding,
 * is the same resonance. After a new strike the tube may have been moved in silence: nothing is said then.
 */
export class RepeatedPasses {
  private last: Flag | null = null;

  /** @returns id of the mark that this flag repeats; null where it is a resonance of its own */
  repeated(resonance: Resonance): string | null {
    const { last } = this;
    if (last === null || resonance.soundingIndex === null) return null;
    const isSameSounding = resonance.soundingIndex === last.resonance.soundingIndex;
    return isSameSounding && resonance.slide !== last.resonance.slide ? last.markId : null;
  }

  /** @param markId  the mark that stands for this flag's resonance */
  note(resonance: Resonance, markId: string): void {
    this.last = { resonance, markId };
  }
}
