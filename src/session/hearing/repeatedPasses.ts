import type { Resonance } from './listeningTypes.ts';

/** A flag of this run and its marks. */
interface Flag {
  readonly resonance: Resonance;
  /** The mark that it made, and the one that stood for its resonance then. */
  readonly markId: string;
  readonly standsFor: string;
}

/** What is known around a flag that has just come. */
export interface FlagSurroundings {
  /** For how long forks sounded between two moments, s. */
  soundedS(fromS: number, toS: number): number;
  /**
   * The mark that stands for a flag's resonance now; null where it is gone, or belongs to another fork or setup.
   * @param markIds  of the flag's own mark and of the one it was joined with; the first that is there counts
   */
  standingFor(markIds: readonly string[]): string | null;
  /** Is this the newest mark of its fork and setup, and does it wait for its length? */
  isNewestWaiting(markId: string): boolean;
}

/** The mark that a flag is joined with. `turned`: there and back in one sounding. `likely`: a judgement, to be parted. */
export interface Repeat {
  readonly markId: string;
  readonly how: 'turned' | 'followed' | 'likely';
}

/** After so long without a pass a new strike is a new search, s. A judgement. */
const SAME_SEARCH_S = 30;
/**
 * The next resonance is at least so many full half-power widths away: 30 to 160 at the first two orders of tubes of 25 to
 * 46 mm at 256 to 512 Hz by the widths of walls and radiation, less what a hand's speed varies.
 */
const NEXT_WIDTHS = 25;

/**
 * Which flags of one run are one resonance passed again, by what is known then:
 *
 * - Within one sounding the slide tells. Along a tube one comes back through a resonance before any other can be met the
 *   other way round, so a phase that turns against the flag before is the same resonance, and one that turns alike the
 *   next.
 * - After a new strike the tube may have been moved in silence. Where the column is followed, the flag is of the resonance
 *   that it is followed around, or it isn't. Where it isn't followed: students strike again because the fork fades, and pass
 *   again before they read, so the flag joins the newest mark of its fork and setup that still waits, within 30 s of its
 *   last pass. Where it goes on the same way, and forks have sounded for long enough to reach the next resonance at the
 *   last pass's own speed, it stays a mark of its own: a false join hides a resonance whose length nobody then reads,
 *   while a false second mark is seen to wait, and is joined by a button.
 */
export class RepeatedPasses {
  private last: Flag | null = null;

  /** The mark that stands for the resonance that was flagged last; null before the first. */
  get standsFor(): string | null {
    return this.last?.standsFor ?? null;
  }

  /** @returns null where the flag is a resonance of its own */
  repeated(resonance: Resonance, around: FlagSurroundings): Repeat | null {
    const { last } = this;
    if (last === null) return null;
    const markId = around.standingFor([last.markId, last.standsFor]);
    if (markId === null) return null;
    if (resonance.soundingIndex === null || last.resonance.soundingIndex === null) return null;
    const isTurned = resonance.slide !== last.resonance.slide;
    if (resonance.soundingIndex === last.resonance.soundingIndex) {
      return isTurned ? { markId, how: 'turned' } : null;
    }
    if (resonance.isFollowed !== undefined) return resonance.isFollowed ? { markId, how: 'followed' } : null;
    if (!around.isNewestWaiting(markId)) return null;
    const { timeS, halfPowerStartS, halfPowerEndS } = last.resonance;
    if (resonance.timeS - timeS > SAME_SEARCH_S) return null;
    const toNextS = NEXT_WIDTHS * (halfPowerEndS - halfPowerStartS);
    if (!isTurned && around.soundedS(timeS, resonance.timeS) >= toNextS) return null;
    return { markId, how: 'likely' };
  }

  /**
   * @param markId  the mark that the flag made
   * @param standsFor  the mark that stands for its resonance, which may be the same
   */
  note(resonance: Resonance, markId: string, standsFor: string): void {
    this.last = { resonance, markId, standsFor };
  }
}
