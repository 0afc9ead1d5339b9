import type { ColumnGuess } from '../../resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import { firstIndexOf, steadyPass } from '../../resonance/following/passCentre.ts';
import { ResonanceFollower } from '../../resonance/following/resonanceFollower.ts';
import { OnlineDetector } from '../../resonance/passages/onlineDetector.ts';
import { ToneStream } from '../../tone/toneStream.ts';
import type { ForkPitch } from '../hearing/listeningTypes.ts';
import { SIDE_BAND_DELAY, SOUNDING_STEP, SoundingTrack } from '../hearing/soundingTrack.ts';

/** How long a fork sounds before a passage where nothing says so, s. */
const UNKNOWN_S = 3;

export interface FollowingOptions {
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
  /** What the column may be. */
  readonly guesses: readonly ColumnGuess[];
}

/**
 * Where the column was after each pass, from what was heard by then. It listens by itself, as the check of a length
 * does: what listens for flags hears a long recording in parts, and a follower goes through all of it.
 */
export class FollowingAnalysis {
  readonly #stream: ToneStream;
  readonly #detector: OnlineDetector;
  readonly #track: SoundingTrack;
  readonly #follower: ResonanceFollower;
  readonly #places: FollowedPlace[] = [];
  #nextSounding = SOUNDING_STEP;
  #sounding: number | null = null;

  /** @throws RangeError when the fork's frequency doesn't fit the sample rate */
  constructor({ sampleRateHz, fork, guesses }: FollowingOptions) {
    this.#stream = new ToneStream(sampleRateHz, fork.nominalHz);
    this.#detector = new OnlineDetector(this.#stream.series, fork.toleranceHz);
    this.#track = new SoundingTrack(this.#stream.series, fork);
    this.#follower = new ResonanceFollower(this.#stream.series, guesses);
  }

  push(samples: Float32Array): void {
    this.#stream.push(samples);
    this.#advance();
  }

  finish(): readonly FollowedPlace[] {
    this.#stream.finish();
    this.#advance();
    return this.#places;
  }

  #advance(): void {
    const { series } = this.#stream;
    const flags = this.#detector.advance();
    this.#followSoundings(series.length - SIDE_BAND_DELAY);
    for (const { passage } of flags) {
      const { offsetHz } = this.#detector;
      if (offsetHz === null) continue;
      const startS = this.#track.open?.startS ?? passage.timeS - UNKNOWN_S;
      this.#follower.flag({
        pass: steadyPass(passage),
        offsetHz,
        fromIndex: firstIndexOf(startS, series.rateHz),
      });
    }
    this.#places.push(...this.#follower.advance());
  }

  #followSoundings(ready: number): void {
    if (ready < this.#nextSounding || this.#detector.offsetHz === null) return;
    while (this.#nextSounding <= ready) this.#nextSounding += SOUNDING_STEP;
    this.#track.advance(this.#detector.view);
    const open = this.#track.open;
    if ((open?.index ?? null) === this.#sounding) return;
    if (open === null) this.#follower.end();
    else this.#follower.strike(open.startS);
    this.#sounding = open?.index ?? null;
  }
}
