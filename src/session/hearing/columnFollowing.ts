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

/** Follows the column over the flags and soundings of one listening. */
export class ColumnFollowing {
  readonly #follower: ResonanceFollower;
  readonly #rateHz: number;
  /** Index of the sounding that goes on; null: none does. */
  #sounding: number | null = null;

  /** @param guesses  what the column may be, as known at the moment of a flag */
  constructor(series: ToneSeries, guesses: () => readonly ColumnGuess[]) {
    this.#follower = new ResonanceFollower(series, guesses);
    this.#rateHz = series.rateHz;
  }

  /** Whether the column is near the resonance that is followed; null where that isn't known. */
  get isNear(): boolean | null {
    return this.#follower.isNear;
  }

  /**
   * A passage was flagged.
   * @param offsetHz  of the fork beside the frequency moved to 0 Hz
   * @param open  the sounding that goes on
   * @returns when the length was right; null where the resonance is being followed already
   */
  flag(passage: DetectedPassage, offsetHz: number, open: Sounding | null): CentreMoment | null {
    const startS = open?.startS ?? passage.timeS - UNKNOWN_S;
    this.#sounding ??= open?.index ?? null;
    return this.#follower.flag({
      pass: steadyPass(passage),
      offsetHz,
      fromIndex: firstIndexOf(startS, this.#rateHz),
    });
  }

  /** @param open  the sounding that goes on now */
  followSounding(open: Sounding | null): void {
    const index = open?.index ?? null;
    if (index === this.#sounding) return;
    if (open === null) this.#follower.end();
    else this.#follower.strike(open.startS);
    this.#sounding = index;
  }

  /** Where the column was, ten times a second since the first flag, as far as it has been heard. */
  advance(): readonly FollowedPlace[] {
    return this.#follower.advance();
  }
}
