import type { KnownTube } from '../../../src/resonance/following/columnGuess.ts';
import { followingTools } from '../../../src/session/hearing/followingTools.ts';
import { Listening } from '../../../src/session/hearing/listening.ts';
import type { ForkPitch } from '../../../src/session/hearing/listeningTypes.ts';
import { RecentLevels } from '../../../src/session/hearing/recentLevels.ts';
import type { Told } from './obeyingHand.ts';

/** The stages as the page runs them, and what it would show a hand. */
export class LiveStages {
  private readonly listening: Listening;
  private readonly recent = new RecentLevels();
  private frames = 0;

  constructor(sampleRateHz: number, fork: ForkPitch, tube: Omit<KnownTube, 'frequencyHz'>) {
    const known = { ...tube, frequencyHz: fork.nominalHz };
    this.listening = new Listening({ sampleRateHz, fork, ...followingTools(() => known) });
  }

  push(samples: Float32Array): Told {
    const update = this.listening.push({ samples, startFrame: this.frames, discontinuity: false });
    this.frames += samples.length;
    this.recent.add(update);
    const { wayBack } = this.recent;
    return {
      flags: this.listening.resonances.length,
      isHere: wayBack.kind === 'here',
      place: wayBack.kind === 'off' ? wayBack.place : null,
      belowBestDb: update.guidance?.belowBestDb ?? null,
    };
  }
}
