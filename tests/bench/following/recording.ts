import { mix, pinkNoise } from '../detector/noises.ts';
import { Random } from '../detector/random.ts';
import { reverberate } from '../detector/reverberation.ts';
import { talk } from '../detector/talk.ts';
import type { Voices } from '../detector/voices/voices.ts';
import { HAND_RATE_HZ } from './hand.ts';
import { drawPlan } from './plan.ts';
import type { Plan } from './plan.ts';
import { columnOf, drawScene } from './scene.ts';
import type { Room, Scene, World } from './scene.ts';
import { ENVELOPE_RATE_HZ, toneEnvelope } from './tone.ts';

export const SAMPLE_RATE_HZ = 48_000;
/** Of the direct sound at the strike. */
const AMPLITUDE = 0.04;

/** A recording and what is true of it. */
export interface Recording {
  readonly samples: Float32Array;
  readonly scene: Scene;
  readonly plan: Plan;
  readonly truth: Truth;
}

export interface Truth {
  readonly resonantLengthM: number;
  readonly halfWidthM: number;
  readonly ringUpS: number;
  /** When the length first was right while the fork sounded. */
  readonly centreS: number;
  /** How far the column is from resonance, m, > 0 too long, HAND_RATE_HZ values a second. */
  readonly offM: Float64Array;
}

export interface RecordingOrder {
  readonly world: World;
  readonly room: Room;
  readonly isStruckAgain: boolean;
  readonly seed: number;
}

export function drawRecording(order: RecordingOrder, voices?: Voices): Recording {
  const random = new Random(order.seed).branch(`${order.world} ${order.room}`);
  const scene = drawScene(random.branch('scene'), order.world, order.room, order.isStruckAgain);
  const plan = drawPlan(random.branch('plan'), scene);
  return render(random, scene, plan, voices);
}

export function render(random: Random, scene: Scene, plan: Plan, voices?: Voices): Recording {
  const envelope = toneEnvelope(random.branch('tone'), scene, plan);
  const length = Math.floor(plan.durationS * SAMPLE_RATE_HZ);
  const truth = truthOf(scene, plan);
  const strike = plan.strikes[0];
  const atPass = AMPLITUDE * Math.exp((strike.startS - truth.centreS) / scene.decayS);
  const samples = roomSound(random.branch('room'), scene, length, atPass / Math.SQRT2, voices);
  const turn = (2 * Math.PI * scene.forkHz) / SAMPLE_RATE_HZ;
  for (let i = 0; i < length; i += 1) {
    const place = (i * ENVELOPE_RATE_HZ) / SAMPLE_RATE_HZ;
    const j = Math.min(envelope.re.length - 2, Math.floor(place));
    const part = place - j;
    const x = envelope.re[j] + part * (envelope.re[j + 1] - envelope.re[j]);
    const y = envelope.im[j] + part * (envelope.im[j + 1] - envelope.im[j]);
    samples[i] += AMPLITUDE * (x * Math.cos(turn * i) - y * Math.sin(turn * i));
  }
  let peak = 0;
  for (const sample of samples) peak = Math.max(peak, Math.abs(sample));
  const gain = peak > 0.9 ? 0.9 / peak : 1;
  const dither = random.branch('dither');
  for (let i = 0; i < length; i += 1) {
    samples[i] = Math.round(32768 * gain * samples[i] + dither.next() - 0.5) / 32768;
  }
  return { samples, scene, plan, truth };
}

/** Everything but the fork. @param reference  rms of the direct sound while the resonance is passed */
export function roomSound(
  random: Random,
  scene: Scene,
  length: number,
  reference: number,
  voices?: Voices,
): Float32Array {
  const result = new Float32Array(length);
  mix(
    result,
    pinkNoise(random.branch('pink'), length, SAMPLE_RATE_HZ),
    reference * 10 ** (random.uniform(-28, -12) / 20),
  );
  const levelDb = { quiet: null, 'talk -10 dB': -10, 'talk 0 dB': 0 }[scene.room];
  if (levelDb === null) return result;
  const dry = talk(random.branch('talk'), length, SAMPLE_RATE_HZ, random.integer(1, 3), voices);
  const wet = reverberate(random.branch('hall'), dry, SAMPLE_RATE_HZ, random.uniform(0.3, 0.6), 3);
  let power = 0;
  for (const value of wet) power += value * value;
  mix(result, wet, (reference * 10 ** (levelDb / 20)) / Math.sqrt(power / length));
  return result;
}

export function truthOf(scene: Scene, plan: Plan): Truth {
  const { resonantLengthM, halfWidthM, ringUpS } = columnOf(scene);
  const offM = Float64Array.from(plan.lengthM, (lengthM) => lengthM - resonantLengthM);
  let i = Math.ceil(plan.strikes[0].startS * HAND_RATE_HZ) + 1;
  while (i < offM.length && offM[i - 1] * offM[i] > 0) i += 1;
  const centreS = (i - 1 + offM[i - 1] / (offM[i - 1] - offM[i])) / HAND_RATE_HZ;
  return { resonantLengthM, halfWidthM, ringUpS, centreS, offM };
}
