import type { Resonance } from './listeningTypes.ts';

/** A flag of this run and its marks. */
interface Flag {
  readonly resonance: Resonance;
  /** The mark that it made, and the one that stood for its resonance then. */
  readonly markId: string;
  readonly standsFor: string;
}

/**
 * The mark that stands for a flag's resonance now; null where it is gone, or belongs to another fork or setup.
 * @param markIds  of the flag's own mark and of the one it was joined with; the first that is there counts
 */
export type StandingFor = (markIds: readonly string[]) => string | null;

/** The mark that a flag is joined with. `turned`: there and back in one sounding. `followed`: by a judgement, to be parted. */
export interface Repeat {
  readonly markId: string;
  readonly how: 'turned' | 'followed';
}

/** Whether a flag is the resonance of the flag just before, passed again. @param last  the flag just before */
export function isRecurring(last: Resonance, { soundingIndex, slide, isFollowed }: Resonance): boolean {
  if (soundingIndex === null) return false;
  return soundingIndex === last.soundingIndex ? slide !== last.slide : isFollowed === true;
}

/**
 * Which flags of one run are one resonance passed again, by what is known then:
 *
 * - Within one sounding the slide tells. Along a tube one comes back through a resonance before any other can be met the
 *   other way round, so a phase that turns against the flag before is the same resonance, and one that turns alike the
 *   next.
 * - After a new strike the tube may have been moved in silence, and the next resonance sounds like this one. Only where
 *   the column was followed up to the strike, near the resonance, and the fork was struck at once, is it the same one.
 *   A false join hides a resonance whose length nobody then reads; a false second mark waits in sight, and is joined by
 *   a button.
 */
export class RepeatedPasses {
  private last: Flag | null = null;

  /** The mark that stands for the resonance that was flagged last; null before the first. */
  get standsFor(): string | null {
    return this.last?.standsFor ?? null;
  }

  /** When the level peaked of the flag that was noted last, s; null before the first. */
  get latestS(): number | null {
    return this.last?.resonance.timeS ?? null;
  }

  /** @returns null where the flag is a resonance of its own */
  repeated(resonance: Resonance, standingFor: StandingFor): Repeat | null {
    const { last } = this;
    if (last === null || !isRecurring(last.resonance, resonance)) return null;
    const isSameSounding = resonance.soundingIndex === last.resonance.soundingIndex;
    const markId = standingFor([last.markId, last.standsFor]);
    return markId === null ? null : { markId, how: isSameSounding ? 'turned' : 'followed' };
  }

  /**
   * @param markId  the mark that the flag made
   * @param standsFor  the mark that stands for its resonance, which may be the same
   */
  note(resonance: Resonance, markId: string, standsFor: string): void {
    this.last = { resonance, markId, standsFor };
  }
}
