import { ColumnAtPitch } from './column.ts';
import { COMPANY, type Company } from './companySounds.ts';
import { knocks, mix, pinkNoise, scrape } from './noises.ts';
import { addStrikeSounds, addTone, perform, type Performance } from './performance.ts';
import { throughPhone } from './phone.ts';
import { drawFork, planPerformance } from './plan.ts';
import { Random } from './random.ts';
import { reverberate, reverberateTone } from './reverberation.ts';
import type { CHECK_CONDITIONS, Condition } from './scenario.ts';
import { noiseAround } from './simulate.ts';
import { talk } from './talk.ts';
import { findPassages } from './truth.ts';
import type { Voices } from './voices/voices.ts';
import type { WorldEntry } from './worldSound.ts';

export const VARIED_WORLD = 'varied';

/** What a recording of the varied world is to show; in each, hands, room and microphone vary more widely than usual. */
export const VARIED_CONDITIONS = [
  'calm',
  'talk',
  'guitar',
  'singing',
  'whistling',
  'water',
  'taps',
  'stick-slip',
  'seeking',
  'turning',
  'no-resonance',
  'talk-alone',
  'guitar-alone',
  'singing-alone',
  'whistling-alone',
  'water-alone',
  'taps-alone',
] as const;

type VariedCondition = (typeof VARIED_CONDITIONS)[number] | (typeof CHECK_CONDITIONS)[number];

const HANDS: Readonly<Record<string, Condition | undefined>> = {
  seeking: 'pause-and-return',
  turning: 'turning',
  'no-resonance': 'no-resonance',
  'check-resonant': 'check-resonant',
  'check-off': 'check-off',
};
const ANY_HANDS: readonly Condition[] = [
  'quiet',
  'quiet',
  'quiet',
  'open-column',
  'slow-slide',
  'fast-slide',
  'pause-and-return',
];

/** The varied world's recordings. @param each  recordings a condition */
export function variedWorld(first: number, each: number, voices: Voices): WorldEntry[] {
  return VARIED_CONDITIONS.flatMap((condition) =>
    Array.from({ length: each }, (_, i) => variedRecording(condition, first + i, voices)),
  );
}

/** One recording of the varied world. */
export function variedRecording(condition: VariedCondition, seed: number, voices: Voices): WorldEntry {
  const scene = { world: VARIED_WORLD, condition, company: COMPANY, voices, hands: 'unpractised' } as const;
  return recordingAmid(scene, seed);
}

/** What recordings amid a company have in common. */
export interface Scene {
  readonly world: string;
  /** A name of the company's, with `-alone` where no fork sounds, or a condition of the varied world. */
  readonly condition: string;
  readonly company: Company;
  readonly voices: Voices;
  /** The own simulator's hands, or such as slip, tremble and jerk more. */
  readonly hands: 'practised' | 'unpractised';
}

/** One recording amid one kind of company, or none. */
export const recordingAmid = (scene: Scene, seed: number): WorldEntry => ({
  world: scene.world,
  condition: scene.condition,
  seed,
  make: () => recordAmid(scene, seed),
});

function recordAmid(
  { world, condition, company, voices, hands: skill }: Scene,
  seed: number,
): ReturnType<WorldEntry['make']> {
  const random = new Random(seed).branch(`${world} ${condition}`);
  const sampleRateHz = random.pick([44100, 48000]);
  const durationS = random.uniform(16, 30);
  const length = Math.floor(durationS * sampleRateHz);
  const controlHz = sampleRateHz / 6;
  const fork = drawFork(random.branch('fork'));
  const hands = HANDS[condition] ?? random.pick(ANY_HANDS);
  const planned = planPerformance(random.branch('own'), hands, fork, durationS, controlHz, false);
  const own =
    skill === 'practised' ? planned : otherHands(random.branch('hands'), condition, planned, controlHz);
  const tone = perform(random.branch('perform'), own, controlHz);
  const echoS = random.uniform(0.15, 0.9);
  const envelope = reverberateTone(random.branch('echo'), tone.envelope, echoS, random.uniform(3, 18));
  const isAlone = condition.endsWith('-alone');

  const room = new Float32Array(length);
  const reference = own.amplitude / Math.SQRT2;
  const add = (sound: Float32Array, levelDb: number): void => {
    const wet = reverberate(random.branch('hall'), sound, sampleRateHz, echoS, random.uniform(-3, 8));
    mix(room, wet, reference * 10 ** (levelDb / 20));
  };
  mix(
    room,
    pinkNoise(random.branch('pink'), length, sampleRateHz),
    reference * 10 ** (random.uniform(-30, -14) / 20),
  );
  const scraped = scrape(random.branch('scrape'), own.lengthM, controlHz, length, sampleRateHz);
  mix(room, scraped, reference * 10 ** (random.uniform(-30, -8) / 20));
  const isTalking = condition.startsWith('talk');
  if (isTalking || random.chance(0.3)) {
    const said = talk(random.branch('talk'), length, sampleRateHz, random.integer(1, 5), voices);
    add(said, isTalking ? random.uniform(-3, 14) : random.uniform(-20, 0));
  }
  // Beside a check anything may be heard, or nothing.
  const isCheck = condition.startsWith('check-');
  const beside =
    isCheck && random.chance(0.4) ? random.pick(Object.keys(company)) : condition.replace('-alone', '');
  if (beside in company) {
    add(company[beside](random.branch(beside), length, sampleRateHz, fork.actualHz), random.uniform(-14, 8));
  }
  if (random.chance(0.3))
    add(knocks(random.branch('knocks'), length, sampleRateHz, random.uniform(0.1, 0.8)), 12);

  const samples = new Float32Array(length);
  if (!isAlone) {
    addTone(samples, sampleRateHz, envelope, fork.actualHz, random.uniform(0, 2 * Math.PI));
    addStrikeSounds(random.branch('strikes'), samples, sampleRateHz, own);
  }
  mix(samples, room, 1);
  const heard = asRecorded(random.branch('microphone'), samples, sampleRateHz);
  const passages =
    isAlone || own.tube === null
      ? []
      : findPassages(
          new ColumnAtPitch(own.tube, fork.actualHz),
          tone,
          own.lengthM,
          noiseAround(room, sampleRateHz, fork.actualHz, 1),
        );
  return {
    samples: heard,
    sampleRateHz,
    truth: { world, condition, seed, durationS, nominalHz: fork.nominalHz, passages },
  };
}

/** The same plan in less practised hands. */
function otherHands(random: Random, condition: string, planned: Performance, rateHz: number): Performance {
  const sticks = condition === 'stick-slip' || random.chance(0.15);
  return {
    ...planned,
    riseDb: random.uniform(4, 22),
    wobbleDb: random.uniform(0.2, 4.5),
    wobbleHz: 0.3 * 20 ** random.next(),
    phaseRms: random.uniform(0.03, 0.45),
    phaseCornerHz: random.uniform(0.3, 3),
    lengthM: sticks ? stickAndSlip(random, planned.lengthM, rateHz) : planned.lengthM,
  };
}

/** A tube that rests until the hand is so far ahead of it, then catches up with a jerk. */
function stickAndSlip(random: Random, lengthM: Float64Array, rateHz: number): Float64Array {
  const result = new Float64Array(lengthM.length);
  const strainM = random.uniform(0.0004, 0.004);
  const slipS = random.uniform(0.02, 0.15);
  let at = lengthM[0];
  let isSlipping = false;
  let limitM = strainM;
  for (let i = 0; i < lengthM.length; i += 1) {
    const behindM = lengthM[i] - at;
    if (!isSlipping && Math.abs(behindM) > limitM) isSlipping = true;
    if (isSlipping) {
      at += behindM / (slipS * rateHz);
      if (Math.abs(behindM) < 0.15 * limitM) {
        isSlipping = false;
        limitM = strainM * random.uniform(0.4, 1.6);
      }
    }
    result[i] = at;
  }
  return result;
}

/** Level, microphone and 16 bits; half of the recordings are a phone's. */
export function asRecorded(random: Random, samples: Float32Array, sampleRateHz: number): Float32Array {
  const heard = random.chance(0.5) ? throughPhone(random, samples, sampleRateHz) : samples;
  let peak = 1e-9;
  for (let i = 0; i < heard.length; i += 1) peak = Math.max(peak, Math.abs(heard[i]));
  const gain = Math.min(0.9 / peak, random.chance(0.3) ? 10 ** (random.uniform(-30, 0) / 20) : 1);
  const noise = 10 ** (random.uniform(-90, -72) / 20);
  return heard.map((value) => {
    const noisy = value * gain + noise * (random.next() - 0.5) * 3.46;
    return Math.max(-32768, Math.min(32767, Math.round(noisy * 32768))) / 32768;
  });
}
