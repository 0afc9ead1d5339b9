import type { KnownTube } from '../../../src/resonance/following/columnGuess.ts';
import type { FollowedPlace } from '../../../src/resonance/following/followedPlace.ts';
import { followingTools } from '../../../src/session/hearing/followingTools.ts';
import { Listening } from '../../../src/session/hearing/listening.ts';
import type { ForkPitch } from '../../../src/session/hearing/listeningTypes.ts';
import type { Told } from './obeyingHand.ts';

/** The stages as the page runs them, and what they would tell a hand. */
export class LiveStages {
  readonly #listening: Listening;
  #frames = 0;
  #isSounding = false;
  #place: FollowedPlace | null = null;

  constructor(sampleRateHz: number, fork: ForkPitch, tube: Omit<KnownTube, 'frequencyHz'>) {
    const known = { ...tube, frequencyHz: fork.nominalHz };
    this.#listening = new Listening({ sampleRateHz, fork, ...followingTools(() => known) });
  }

  push(samples: Float32Array): Told {
    const { followed, guidance, soundings } = this.#listening.push({
      samples,
      startFrame: this.#frames,
      discontinuity: false,
    });
    this.#frames += samples.length;
    const newest = soundings.at(-1);
    if (newest !== undefined) this.#isSounding = newest.endS === null;
    this.#place = this.#isSounding ? (followed.at(-1) ?? this.#place) : null;
    return {
      flags: this.#listening.resonances.length,
      halfWidths: this.#place?.halfWidths ?? null,
      distanceM: this.#place?.distanceM ?? null,
      belowBestDb: guidance?.belowBestDb ?? null,
    };
  }
}
