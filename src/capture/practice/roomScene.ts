import { Knocks } from './knocks.ts';
import { OtherFork } from './otherFork.ts';
import { Reverberation } from './reverberation.ts';
import { RoomHum } from './roomHum.ts';
import type { SeededRandom } from './seededRandom.ts';
import { Talker } from './talker.ts';

/** How busy the room is. */
export type RoomNoise = 'quiet' | 'talk' | 'full class';

/**
 * Levels of the talk, dB with 0 dB a sine of amplitude 1: talk is 6 dB stronger than a freshly struck fork alone, a
 * full class 13 dB. A judgement; distances and microphones differ by more.
 */
const TALK_LEVEL_DB = { quiet: -Infinity, talk: -34, 'full class': -27 } as const;
const MEAN_KNOCK_WAIT_S = { quiet: Infinity, talk: 9, 'full class': 3 } as const;
const TALKERS = { quiet: 0, talk: 2, 'full class': 6 } as const;
/** Mean square of one talker with pauses and echoes, before any gain; measured, and checked by the room's test. */
const TALKER_MEAN_SQUARE = 284;
const ROOM_LEVEL_DB = -62;
const MICROPHONE_LEVEL_DB = -84;
const VOICES = [
  [205, 1.15],
  [118, 1],
  [262, 1.3],
  [132, 1.02],
  [275, 1.3],
  [225, 1.18],
] as const;

/** Everything in the room but one's own fork. */
export class RoomScene {
  private readonly hum: RoomHum;
  private readonly talkers: readonly Talker[];
  private readonly knocks: Knocks;
  private readonly others: readonly OtherFork[];
  private readonly reverberation: Reverberation;
  private readonly talkGain: number;
  private readonly humGain = amplitudeOf(ROOM_LEVEL_DB);
  private readonly microphoneGain = amplitudeOf(MICROPHONE_LEVEL_DB);

  /** @param stampedHz  of one's own fork: in a full class others hold the same one */
  constructor(
    private readonly random: SeededRandom,
    sampleRateHz: number,
    noise: RoomNoise,
    stampedHz: number,
  ) {
    this.hum = new RoomHum(random, sampleRateHz);
    this.talkers = VOICES.slice(0, TALKERS[noise]).map(
      ([pitchHz, tract]) => new Talker(random, sampleRateHz, pitchHz, tract),
    );
    this.knocks = new Knocks(random, sampleRateHz, MEAN_KNOCK_WAIT_S[noise]);
    // Two forks of the usual set and one stamped as one's own, each off its stamp.
    const pitchesHz = noise === 'full class' ? [stampedHz, stampedHz * 0.75, stampedHz * 1.25] : [];
    this.others = pitchesHz.map((pitchHz, i) => {
      const off = (random.uniform() < 0.5 ? -1 : 1) * random.between(0.0015, 0.004);
      return new OtherFork(random, sampleRateHz, pitchHz * (1 + off), i === 0 ? 0.002 : 0.004);
    });
    this.reverberation = new Reverberation(0.4, sampleRateHz);
    this.talkGain =
      this.talkers.length === 0
        ? 0
        : amplitudeOf(TALK_LEVEL_DB[noise]) / Math.sqrt(TALKER_MEAN_SQUARE * this.talkers.length);
  }

  step(stepS: number): void {
    for (const talker of this.talkers) talker.step(stepS);
    for (const other of this.others) other.step(stepS);
    this.knocks.step(stepS);
  }

  next(): number {
    let talk = 0;
    for (const talker of this.talkers) talk += talker.next();
    let others = 0;
    for (const other of this.others) others += other.next();
    const echoing = this.reverberation.next(this.talkGain * talk + others + this.knocks.next());
    return (
      echoing +
      this.humGain * this.hum.next() +
      this.microphoneGain * Math.sqrt(12) * (this.random.uniform() - 0.5)
    );
  }
}

/** Root mean square of a sound at this level. */
function amplitudeOf(levelDb: number): number {
  return levelDb === -Infinity ? 0 : 10 ** (levelDb / 20) * Math.SQRT1_2;
}
