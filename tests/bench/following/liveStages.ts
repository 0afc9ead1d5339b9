import { steadyPass, firstIndexOf } from '../../../src/resonance/following/passCentre.ts';
import { guessesOf } from '../../../src/resonance/following/columnGuess.ts';
import type { KnownTube } from '../../../src/resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../../src/resonance/following/followedPlace.ts';
import { ResonanceFollower } from '../../../src/resonance/following/resonanceFollower.ts';
import { OnlineDetector } from '../../../src/resonance/passages/onlineDetector.ts';
import { LevelBelowMaximum } from '../../../src/session/hearing/levelBelowMaximum.ts';
import { LevelTrace } from '../../../src/session/hearing/levelTrace.ts';
import type { ForkPitch, Resonance } from '../../../src/session/hearing/listeningTypes.ts';
import { resonanceOfPassage } from '../../../src/session/hearing/resonanceOfPassage.ts';
import { SIDE_BAND_DELAY, SOUNDING_STEP, SoundingTrack } from '../../../src/session/hearing/soundingTrack.ts';
import { BroadbandMeter } from '../../../src/tone/broadbandMeter.ts';
import { ToneStream } from '../../../src/tone/toneStream.ts';
import type { Told } from './obeyingHand.ts';

/** How long a fork sounds before a passage where nothing says so, s. */
const UNKNOWN_S = 3;

/** The stages in the order in which the page runs them, block by block, and what they would tell a hand. */
export class LiveStages {
  readonly #stream: ToneStream;
  readonly #detector: OnlineDetector;
  readonly #track: SoundingTrack;
  readonly #follower: ResonanceFollower;
  readonly #broadband: BroadbandMeter;
  readonly #trace: LevelTrace;
  readonly #level = new LevelBelowMaximum();
  readonly #resonances: Resonance[] = [];
  #nextSounding = SOUNDING_STEP;
  #sounding: number | null = null;
  #place: FollowedPlace | null = null;

  constructor(sampleRateHz: number, fork: ForkPitch, tube: Omit<KnownTube, 'frequencyHz'>) {
    this.#stream = new ToneStream(sampleRateHz, fork.nominalHz);
    const { series } = this.#stream;
    this.#detector = new OnlineDetector(series, fork.toleranceHz);
    this.#track = new SoundingTrack(series, fork);
    this.#follower = new ResonanceFollower(series, guessesOf({ ...tube, frequencyHz: fork.nominalHz }));
    this.#broadband = new BroadbandMeter(sampleRateHz);
    this.#trace = new LevelTrace(series, this.#broadband);
  }

  /** @param samples  as many as one analysis block has */
  push(samples: Float32Array): Told {
    this.#broadband.push(samples);
    this.#stream.push(samples);
    const { series } = this.#stream;
    const flags = this.#detector.advance();
    const ready = series.length - SIDE_BAND_DELAY;
    const offsetHz = this.#detector.offsetHz ?? 0;
    for (const { point, coherentMeanSquare } of this.#trace.advance(ready, offsetHz)) {
      this.#level.push(point.timeS, coherentMeanSquare);
    }
    this.#followSoundings(ready);
    for (const { passage, decidedIndex } of flags) {
      const flaggedAtS = decidedIndex / series.rateHz;
      this.#resonances.push(resonanceOfPassage(passage, this.#track.soundings, null, flaggedAtS));
      const startS = this.#track.open?.startS ?? passage.timeS - UNKNOWN_S;
      const fromIndex = firstIndexOf(startS, series.rateHz);
      this.#follower.flag({ pass: steadyPass(passage), offsetHz, fromIndex });
    }
    const places = this.#follower.advance();
    this.#place = places.at(-1) ?? this.#place;
    return this.#told();
  }

  #told(): Told {
    const { open, decayTimeS } = this.#track;
    const guidance = open === null ? null : this.#level.guide(this.#resonances, open, decayTimeS);
    return {
      flags: this.#resonances.length,
      halfWidths: this.#place?.halfWidths ?? null,
      distanceM: this.#place?.distanceM ?? null,
      belowBestDb: guidance?.belowBestDb ?? null,
    };
  }

  #followSoundings(ready: number): void {
    if (ready < this.#nextSounding || this.#detector.offsetHz === null) return;
    while (this.#nextSounding <= ready) this.#nextSounding += SOUNDING_STEP;
    this.#track.advance(this.#detector.view);
    const { open } = this.#track;
    if ((open?.index ?? null) === this.#sounding) return;
    this.#level.clear();
    if (open === null) {
      this.#follower.end();
      this.#place = null;
    } else this.#follower.strike(open.startS);
    this.#sounding = open?.index ?? null;
  }
}
