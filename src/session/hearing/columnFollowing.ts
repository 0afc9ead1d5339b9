import type { ColumnGuess } from '../../resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import { firstIndexOf, steadyPass } from '../../resonance/following/passCentre.ts';
import type { CentreMoment } from '../../resonance/following/passRun.ts';
import { ResonanceFollower } from '../../resonance/following/resonanceFollower.ts';
import type { DetectedPassage } from '../../resonance/passages/detectedPassage.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { Sounding } from './listeningTypes.ts';

/** How long a fork sounds before a passage where nothing says so, s. */
const UNKNOWN_S = 3;
/** A fork that fades is struck again within this, s (a judgement). */
const AT_ONCE_S = 5;

/** Follows the column over the flags and soundings of one listening. */
export class ColumnFollowing {
  private follower: ResonanceFollower;
  private readonly rateHz: number;
  /** Index of the sounding that goes on; null: none does. */
  private sounding: number | null = null;
  /** Where the newest sounding ended, s; null while it sounds. */
  private endedS: number | null = null;
  /** Whether the column can't have gone far from the resonance unheard. */
  private stayed = true;

  /** @param guesses  what the column may be, as known at the moment of a flag */
  constructor(
    series: ToneSeries,
    private readonly guesses: () => readonly ColumnGuess[],
  ) {
    this.follower = new ResonanceFollower(series, guesses);
    this.rateHz = series.rateHz;
  }

  /**
   * The same column in another series of the same source and fork, from its next sounding on.
   * @param beganS  where that series begins on this one's time axis, s
   */
  handedTo(series: ToneSeries, beganS: number): ColumnFollowing {
    const other = new ColumnFollowing(series, this.guesses);
    other.follower = this.follower.handedTo(series);
    other.endedS = this.endedS === null ? null : this.endedS - beganS;
    // What still sounds is struck anew there: its phase counts from another moment.
    other.stayed = this.stayed && (this.sounding === null || this.follower.isNear === true);
    return other;
  }

  /**
   * Whether the column is near the resonance that is followed; null where that isn't known. After a strike only where
   * it was near before, and the fork was struck at once: in silence it may have gone to the next.
   */
  get isNear(): boolean | null {
    return this.stayed ? this.follower.isNear : null;
  }

  /**
   * A passage was flagged.
   * @param offsetHz  of the fork beside the frequency moved to 0 Hz
   * @param open  the sounding that goes on
   * @returns when the length was right; null where the resonance is being followed already
   */
  flag(passage: DetectedPassage, offsetHz: number, open: Sounding | null): CentreMoment | null {
    const startS = open?.startS ?? passage.timeS - UNKNOWN_S;
    this.sounding ??= open?.index ?? null;
    const centre = this.follower.flag({
      pass: steadyPass(passage),
      offsetHz,
      fromIndex: firstIndexOf(startS, this.rateHz),
      mayBeAnother: !this.stayed,
    });
    // It is the resonance that is followed now.
    this.stayed = true;
    return centre;
  }

  /** @param open  the sounding that goes on now @param lastHeardS  up to when the sound was looked at */
  followSounding(open: Sounding | null, lastHeardS: number): void {
    const index = open?.index ?? null;
    if (index === this.sounding) return;
    // What ends was followed up to here.
    if (this.sounding !== null && this.follower.isNear !== true) this.stayed = false;
    if (open === null) {
      this.follower.end();
      this.endedS = lastHeardS;
    } else {
      if (this.endedS !== null && open.startS - this.endedS > AT_ONCE_S) this.stayed = false;
      this.endedS = null;
      this.follower.strike(open.startS);
    }
    this.sounding = index;
  }

  /** Where the column was, ten times a second since the first flag, as far as it has been heard. */
  advance(): readonly FollowedPlace[] {
    return this.follower.advance();
  }
}
