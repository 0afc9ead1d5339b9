import type { SampleBlock, SoundListener, SoundSource } from '../../../../src/capture/soundSource.ts';
import type { ListeningLike } from '../../../../src/session/hearing/listeningLike.ts';
import type {
  LevelPoint,
  ListeningUpdate,
  Resonance,
} from '../../../../src/session/hearing/listeningTypes.ts';
import { NOTHING_HEARD } from '../../../support/nothingHeard.ts';

const SAMPLE_RATE_HZ = 48_000;
/** From one passage to the next, s: longer than a mark's trace goes on after its peak. */
const PASSAGE_S = 5;
/** Points of the level trace that come with a passage, and from one to the next, s. */
const POINTS = 4;
const STEP_S = 0.5;
/** One passage as the hand made it. */
export interface Passage {
  readonly slide: Resonance['slide'];
  /** The sounding that it falls in, 1, 2, 3… */
  readonly sounding: number;
}

/** A practice column and a detector that flags just what the test lets pass. */
export class PracticeEars implements SoundSource {
  readonly kind = 'practice';
  private listener: SoundListener | null = null;
  private passages: Passage[] = [];

  /** Stands in for the detector: a block's first sample is the number of its passage. */
  readonly createListening = (): ListeningLike => ({
    push: (block) => this.hear(block),
    finish: () => NOTHING_HEARD,
    offlineReport: () => {
      throw new Error('Practice has no offline report.');
    },
  });

  start(listener: SoundListener): Promise<void> {
    this.passages = [];
    this.listener = listener;
    listener.onState({ kind: 'running', sampleRateHz: SAMPLE_RATE_HZ, settings: null });
    return Promise.resolve();
  }

  stop(): void {
    this.listener = null;
  }

  /** Number of the newest sounding; 0 before the first. */
  get sounding(): number {
    return this.passages.at(-1)?.sounding ?? 0;
  }

  pass(passage: Passage): void {
    this.passages.push(passage);
    const number = this.passages.length;
    const samples = new Float32Array(2048).fill(number);
    this.listener?.onBlock({
      samples,
      startFrame: (number - 1) * PASSAGE_S * SAMPLE_RATE_HZ,
      discontinuity: false,
    });
  }

  private hear({ samples, startFrame }: SampleBlock): ListeningUpdate {
    const passage = this.passages[(samples[0] ?? 0) - 1];
    if (passage === undefined) return NOTHING_HEARD;
    const startS = startFrame / SAMPLE_RATE_HZ;
    const points = Array.from({ length: POINTS }, (_, index): LevelPoint => {
      const timeS = startS + index * STEP_S;
      return { timeS, toneDb: -20 - index, roomDb: -60, broadbandDb: -20, riseDb: 40 - index };
    });
    return { ...NOTHING_HEARD, points, resonances: [resonanceOf(passage, startS + STEP_S)] };
  }
}

function resonanceOf({ slide, sounding }: Passage, timeS: number): Resonance {
  return {
    timeS,
    riseDb: 12,
    centre: null,
    riseStandardUncertaintyDb: 0.5,
    aboveRoomDb: 30,
    confidence: 0.9,
    certainty: 'sure',
    phaseSwingRad: 2.5,
    slide,
    halfPowerStartS: timeS - 0.1,
    halfPowerEndS: timeS + 0.1,
    soundingIndex: sounding,
    flaggedAtS: timeS,
  };
}
