import type { ColumnGuess } from '../../resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import { firstIndexOf, steadyPass } from '../../resonance/following/passCentre.ts';
import type { CentreMoment } from '../../resonance/following/passRun.ts';
import { ResonanceFollower } from '../../resonance/following/resonanceFollower.ts';
import { OnlineDetector } from '../../resonance/passages/onlineDetector.ts';
import { ToneStream } from '../../tone/toneStream.ts';
import type { ForkPitch } from '../hearing/listeningTypes.ts';
import { SoundingTrack } from '../hearing/soundingTrack.ts';

/** Narrow values between two searches for soundings. */
const SOUNDING_STEP = 25;
/** The side bands around a value are complete within so many further values. */
const LOOKAHEAD = 12;

/** How long a fork sounds before a passage where nothing says so, s. */
const UNKNOWN_S = 3;

export interface FollowingOptions {
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
  /** What the column may be. */
  readonly guesses: readonly ColumnGuess[];
}

export interface Following {
  readonly places: readonly FollowedPlace[];
  /** When the length was right, for each pass that was seen. */
  readonly centres: readonly CentreMoment[];
}

/** Where the column was after each pass, from what was heard by then. */
export class FollowingAnalysis {
  readonly #stream: ToneStream;
  readonly #detector: OnlineDetector;
  readonly #track: SoundingTrack;
  readonly #follower: ResonanceFollower;
  readonly #places: FollowedPlace[] = [];
  readonly #centres: CentreMoment[] = [];
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

  finish(): Following {
    this.#stream.finish();
    this.#advance();
    return { places: this.#places, centres: this.#centres };
  }

  #advance(): void {
    const { series } = this.#stream;
    const flags = this.#detector.advance();
    this.#followSoundings(series.length - LOOKAHEAD);
    for (const { passage } of flags) {
      const { offsetHz } = this.#detector;
      if (offsetHz === null) continue;
      const startS = this.#track.open?.startS ?? passage.timeS - UNKNOWN_S;
      this.#follower.flag({
        pass: steadyPass(passage),
        offsetHz,
        fromIndex: firstIndexOf(startS, series.rateHz),
      });
      if (this.#follower.centre !== null) this.#centres.push(this.#follower.centre);
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
    else if (this.#sounding !== open.index) this.#follower.strike(open.startS);
    this.#sounding = open?.index ?? null;
  }
}
