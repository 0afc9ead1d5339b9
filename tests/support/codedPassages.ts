import type { SampleBlock } from '../../src/capture/soundSource.ts';
import type { ListeningLike } from '../../src/session/hearing/listeningLike.ts';
import type { ListeningUpdate } from '../../src/session/hearing/listeningTypes.ts';
import { flagAt, NOTHING_HEARD } from './nothingHeard.ts';

/** Blocks of one passage. */
export const PASSAGE_PARTS = 4;
/** The sample value that stands for one part (0..3) of a passage (1, 2, 3…, below 1000). */
export function passageSample(passage: number, part: number): number {
  return (10 * passage + part) / 10_000;
}

/**
 * Stands in for the detector where only the way from the microphone to the marks is tested: it flags a passage when it
 * has heard its parts one after the other in unbroken sound, and gives its number as the rise.
 */
export class CodedListening implements ListeningLike {
  private passage = 0;
  private parts = 0;

  push(block: SampleBlock): ListeningUpdate {
    if (block.discontinuity) this.parts = 0;
    const code = Math.round((block.samples[0] ?? 0) * 10_000);
    const [passage, part] = [Math.floor(code / 10), code % 10];
    this.parts = part === 0 ? 1 : passage === this.passage && part === this.parts ? part + 1 : 0;
    this.passage = passage;
    if (this.parts < PASSAGE_PARTS || passage === 0) return NOTHING_HEARD;
    this.parts = 0;
    const timeS = block.startFrame / 48_000;
    return {
      ...NOTHING_HEARD,
      resonances: [flagAt(timeS, { riseDb: passage, aboveRoomDb: 20, flaggedAtS: timeS })],
    };
  }

  finish(): ListeningUpdate {
    return NOTHING_HEARD;
  }

  offlineReport(): never {
    throw new Error('A microphone’s run has no second look.');
  }
}
