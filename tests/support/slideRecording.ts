import { ColumnAtPitch } from '../bench/detector/column.ts';
import { mix, pinkNoise } from '../bench/detector/noises.ts';
import { addStrikeSounds, addTone, perform } from '../bench/detector/performance.ts';
import type { Performance, Strike } from '../bench/detector/performance.ts';
import { Random } from '../bench/detector/random.ts';
import { talk } from '../bench/detector/talk.ts';
import { Timeline } from '../bench/detector/timeline.ts';
import { findPassages } from '../bench/detector/truth.ts';
import type { Voices } from '../bench/detector/voices/voices.ts';

export interface SlideScenario {
  readonly forkHz: number;
  readonly closed: boolean;
  readonly seed: number;
  /** Level of several people's talk against the fork's own sound right after a strike, both broadband rms. */
  readonly talkDb: number;
  /** Whose talk; the generated voices' unless a benchmark is told otherwise. */
  readonly voices?: Voices;
}

/** A recording with everything that is true about it. */
export interface SlideRecording {
  readonly samples: Float32Array;
  readonly sampleRateHz: number;
  readonly forkHz: number;
  readonly radiusM: number;
  readonly temperatureC: number;
  /** In free air: what the experiment should find. */
  readonly freeSpeedMps: number;
  /** Order, length and moment of each resonance passed. */
  readonly passages: readonly { readonly order: number; readonly lengthM: number; readonly timeS: number }[];
}

const SAMPLE_RATE_HZ = 48_000;
const CONTROL_RATE_HZ = 8000;
const SLIDE_MPS = 0.035;
const AMPLITUDE = 0.03;
/** Levels of an empty room's noise and of a microphone's own, dB re full scale, rms. Common practice, no source. */
const ROOM_DB = -65;
const SELF_NOISE_DB = -84;

/** Two soundings of a fork; in each the column slides past one of its first two resonances, amid talk. */
export function slideRecording(scenario: SlideScenario): SlideRecording {
  const random = new Random(scenario.seed);
  const temperatureC = 22;
  const tube = { radiusM: 0.0175, closed: scenario.closed, lossFactor: 1.2, endFactor: 1, temperatureC };
  const fork = { nominalHz: scenario.forkHz, actualHz: scenario.forkHz, decayTimeS: 9 };
  const column = new ColumnAtPitch(tube, fork.actualHz);
  const firstM = column.resonantLengthM(1);
  const secondM = column.resonantLengthM(2);
  const { lengthM, strikes, durationS } = hands(random, firstM, secondM);
  const performance: Performance = {
    fork,
    tube,
    lengthM,
    strikes,
    amplitude: AMPLITUDE,
    riseDb: 15,
    riseOrder: 1,
    mouthPhaseRad: 1.1,
    awayDb: -2,
    wobbleDb: 0.8,
    wobbleHz: 1.5,
    phaseRms: 0.1,
    phaseCornerHz: 1,
    turnRad: null,
    clickLevel: 3,
    clangLevel: 0.5,
    clangDecayS: 0.15,
  };
  const tone = perform(random.branch('perform'), performance, CONTROL_RATE_HZ);
  const samples = new Float32Array(Math.floor(durationS * SAMPLE_RATE_HZ));
  addTone(samples, SAMPLE_RATE_HZ, tone.envelope, fork.actualHz, 0.4);
  addStrikeSounds(random.branch('strikes'), samples, SAMPLE_RATE_HZ, performance);
  const talkRms = (AMPLITUDE / Math.SQRT2) * 10 ** (scenario.talkDb / 20);
  mix(samples, talk(random.branch('talk'), samples.length, SAMPLE_RATE_HZ, 3, scenario.voices), talkRms);
  addFloor(random, samples);
  for (let i = 0; i < samples.length; i += 1) samples[i] = Math.max(-1, Math.min(1, samples[i] ?? 0));
  return {
    samples,
    sampleRateHz: SAMPLE_RATE_HZ,
    forkHz: fork.actualHz,
    radiusM: tube.radiusM,
    temperatureC,
    // The generator's own law, 331.3 √(T / 273.15): common practice.
    freeSpeedMps: 331.3 * Math.sqrt(1 + temperatureC / 273.15),
    passages: findPassages(column, tone, lengthM, () => 0)
      .filter((passage) => passage.audible)
      .map(({ order, timeS }) => ({ order, timeS, lengthM: column.resonantLengthM(order) })),
  };
}

/** What is heard while nobody speaks and no fork sounds. */
function addFloor(random: Random, samples: Float32Array): void {
  mix(samples, pinkNoise(random.branch('room'), samples.length, SAMPLE_RATE_HZ), 10 ** (ROOM_DB / 20));
  const microphone = random.branch('microphone');
  const selfNoise = Math.sqrt(12) * 10 ** (SELF_NOISE_DB / 20);
  for (let i = 0; i < samples.length; i += 1) samples[i] += selfNoise * (microphone.next() - 0.5);
}

function hands(random: Random, firstM: number, secondM: number) {
  const line = new Timeline(random.branch('hand'), firstM - 0.07, 60);
  const strikes: Strike[] = [];
  const sounding = (toM: number): void => {
    const strikeS = line.timeS;
    line.hold(1.6);
    line.slideTo(toM, SLIDE_MPS);
    line.hold(0.8);
    strikes.push({
      strikeS,
      strength: 1,
      visits: [{ fromS: strikeS + 0.5, byS: strikeS + 0.9, leaveS: null, goneS: null }],
      dampedS: line.timeS,
    });
  };
  line.hold(3);
  sounding(firstM + 0.07);
  line.hold(1.5);
  line.slideTo(secondM - 0.07, 0.2);
  line.hold(1);
  sounding(secondM + 0.07);
  line.hold(2);
  const durationS = line.timeS;
  const lengthM = line.resampled(CONTROL_RATE_HZ).subarray(0, Math.floor(durationS * CONTROL_RATE_HZ));
  return { lengthM, strikes, durationS };
}
