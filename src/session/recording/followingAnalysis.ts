import { ANALYSIS_BLOCK } from '../../capture/signal/analysisBlock.ts';
import type { KnownTube } from '../../resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import { OnlineDetector } from '../../resonance/passages/onlineDetector.ts';
import { ToneStream } from '../../tone/toneStream.ts';
import type { ColumnFollowing } from '../hearing/columnFollowing.ts';
import { followingTools } from '../hearing/followingTools.ts';
import type { ForkPitch } from '../hearing/listeningTypes.ts';
import { SIDE_BAND_DELAY, SOUNDING_STEP, SoundingTrack } from '../hearing/soundingTrack.ts';

export interface FollowingOptions {
  readonly sampleRateHz: number;
  readonly fork: ForkPitch;
  /** The tube that is slid; null where it isn't known. */
  readonly tube: KnownTube | null;
}

/**
 * Where the column was after each pass, from what was heard by then. It listens by itself, as the check of a length
 * does: what listens for flags hears a long recording in parts, and a follower goes through all of it.
 */
export class FollowingAnalysis {
  private readonly stream: ToneStream;
  private readonly detector: OnlineDetector;
  private readonly track: SoundingTrack;
  private readonly following: ColumnFollowing;
  private readonly places: FollowedPlace[] = [];
  /** Samples of the block that isn't complete yet. */
  private readonly block = new Float32Array(ANALYSIS_BLOCK);
  private filled = 0;
  private nextSounding = SOUNDING_STEP;

  /** @throws RangeError when the fork's frequency doesn't fit the sample rate */
  constructor({ sampleRateHz, fork, tube }: FollowingOptions) {
    this.stream = new ToneStream(sampleRateHz, fork.nominalHz);
    this.detector = new OnlineDetector(this.stream.series, fork.toleranceHz);
    this.track = new SoundingTrack(this.stream.series, fork);
    this.following = followingTools(() => tube).follow(this.stream.series);
  }

  /** Decides after each whole block, as listening does: how the samples come changes nothing. */
  push(samples: Float32Array): void {
    for (let taken = 0; taken < samples.length;) {
      const part = Math.min(samples.length - taken, ANALYSIS_BLOCK - this.filled);
      this.block.set(samples.subarray(taken, taken + part), this.filled);
      taken += part;
      this.filled += part;
      if (this.filled < ANALYSIS_BLOCK) continue;
      this.filled = 0;
      this.stream.push(this.block);
      this.advance();
    }
  }

  finish(): readonly FollowedPlace[] {
    this.stream.push(this.block.subarray(0, this.filled));
    this.stream.finish();
    this.advance();
    return this.places;
  }

  private advance(): void {
    const { series } = this.stream;
    for (const { passage } of this.detector.advance()) {
      this.following.flag(passage, this.detector.offsetHz ?? 0, this.track.open);
    }
    this.followSoundings(series.length - SIDE_BAND_DELAY);
    this.places.push(...this.following.advance());
  }

  private followSoundings(ready: number): void {
    if (ready < this.nextSounding || this.detector.offsetHz === null) return;
    while (this.nextSounding <= ready) this.nextSounding += SOUNDING_STEP;
    this.track.advance(this.detector.view);
    this.following.followSounding(this.track.open, ready / this.stream.series.rateHz);
  }
}
