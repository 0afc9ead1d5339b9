import { addBurst, hum, knocks, mix, pinkNoise } from '../detector/noises.ts';
import { Random } from '../detector/random.ts';
import { talk } from '../detector/talk.ts';
import type { Voices } from '../detector/voices/voices.ts';

/** What is done in a scene: a column slid past resonances, or a column that stays while somebody talks. */
export type SceneKind = 'slide' | 'fixed';

/** A recording of a bench in a room as a raw microphone gives it, with what was put in. */
export interface Scene {
  readonly kind: SceneKind;
  readonly seed: number;
  readonly samples: Float32Array;
  readonly forkHz: number;
  /** When the column resonates, s. */
  readonly passagesS: readonly number[];
  readonly facts: string;
}

export const SCENE_RATE_HZ = 48_000;
export const SCENE_S = 12;

const FORKS_HZ = [256, 288, 320, 341.3, 384, 426.7, 440, 480, 512] as const;
/** The moment of the strike, s: the first second is the room alone. */
const STRIKE_S = 1.2;

/** Makes a scene; the same seed and voices give the same sound. */
export function makeScene(kind: SceneKind, seed: number, voices: Voices): Scene {
  const random = new Random(seed);
  const length = SCENE_S * SCENE_RATE_HZ;
  const samples = new Float32Array(length);
  const roomDb = random.uniform(-68, -48);
  const talkDb = random.uniform(-46, -24);
  const selfNoiseDb = random.uniform(-92, -74);
  const forkDb = random.uniform(-42, -16);
  const forkHz = random.pick(FORKS_HZ);
  const passagesS = addFork(random.branch('fork'), samples, kind, forkHz, 10 ** (forkDb / 20));
  mix(samples, pinkNoise(random.branch('room'), length, SCENE_RATE_HZ), 10 ** (roomDb / 20));
  if (random.chance(0.4)) {
    mix(samples, hum(random.branch('hum'), length, SCENE_RATE_HZ), 10 ** (random.uniform(-75, -52) / 20));
  }
  const talkers = random.integer(1, 4);
  mix(samples, talkWithHiss(random.branch('talk'), length, talkers, voices), 10 ** (talkDb / 20));
  mix(
    samples,
    knocks(random.branch('knocks'), length, SCENE_RATE_HZ, 0.2),
    10 ** (random.uniform(-40, -16) / 20),
  );
  hearThrough(random.branch('microphone'), samples, 10 ** (selfNoiseDb / 20));
  const facts = `room ${roomDb.toFixed(0)}, talk ${talkDb.toFixed(0)} (${talkers}), self-noise ${selfNoiseDb.toFixed(0)}, fork ${forkDb.toFixed(0)} dB at ${forkHz} Hz`;
  return { kind, seed, samples, forkHz, passagesS, facts };
}

/** A struck fork that dies away, its strike's click, and, in a slide, the column's swells. @returns when they are, s */
function addFork(
  random: Random,
  samples: Float32Array,
  kind: SceneKind,
  forkHz: number,
  amplitude: number,
): readonly number[] {
  const decayS = random.uniform(4, 11);
  const swells =
    kind === 'fixed'
      ? []
      : [random.uniform(3, 5), random.uniform(6.5, 9.5)].map((atS) => ({
          atS,
          halfS: random.uniform(0.12, 0.5),
          gain: 10 ** (random.uniform(5, 16) / 20) - 1,
          turnRad: random.uniform(-1.2, 1.2),
        }));
  // A hand holds the fork: its distance to the mouth trembles.
  const wobble = random.uniform(0, 0.05);
  const wobbleHz = random.uniform(0.4, 2);
  const step = (2 * Math.PI * forkHz) / SCENE_RATE_HZ;
  for (let i = Math.round(STRIKE_S * SCENE_RATE_HZ); i < samples.length; i += 1) {
    const t = i / SCENE_RATE_HZ;
    let re = 1;
    let im = 0;
    for (const { atS, halfS, gain, turnRad } of swells) {
      // A resonator's response 1 / (1 + ix), turned by the way from its mouth to the microphone.
      const x = (t - atS) / halfS;
      const size = gain / (1 + x * x);
      re += size * (Math.cos(turnRad) + x * Math.sin(turnRad));
      im += size * (Math.sin(turnRad) - x * Math.cos(turnRad));
    }
    const envelope =
      amplitude * Math.exp(-(t - STRIKE_S) / decayS) * (1 + wobble * Math.sin(2 * Math.PI * wobbleHz * t));
    samples[i] = (samples[i] ?? 0) + envelope * (re * Math.cos(step * i) - im * Math.sin(step * i));
  }
  const overtoneHz = 6.27 * forkHz;
  addBurst(samples, SCENE_RATE_HZ, STRIKE_S, { level: amplitude, frequencyHz: overtoneHz, decayS: 0.15 });
  return swells.map(({ atS }) => atS);
}

/**
 * Talk with the hisses that installed voices lack: theirs end at 4 kHz (recorded) or 11 kHz (synthesised), those of
 * people reach beyond 16 kHz, and generated ones do.
 */
function talkWithHiss(random: Random, length: number, talkers: number, voices: Voices): Float32Array {
  const said = talk(random.branch('said'), length, SCENE_RATE_HZ, talkers, voices);
  if (voices.kind === 'generated') return said;
  const hiss = random.branch('hiss');
  const share = hiss.uniform(0.1, 0.4);
  for (let at = 0; at < length; at += Math.round(hiss.uniform(0.15, 0.9) * SCENE_RATE_HZ)) {
    const span = Math.round(hiss.uniform(0.05, 0.16) * SCENE_RATE_HZ);
    const level = share * Math.exp(0.5 * hiss.gauss());
    let before = 0;
    let low = 0;
    for (let i = at; i < Math.min(length, at + span); i += 1) {
      const white = 2 * hiss.next() - 1;
      // Difference: +6 dB an octave; one pole at about 7 kHz makes it flat above.
      low += 0.6 * (white - before - low);
      before = white;
      said[i] = (said[i] ?? 0) + level * Math.sin((Math.PI * (i - at)) / span) * low;
    }
  }
  return said;
}

/** A microphone's low cut, its roll-off and its own noise; then 16 bits. In place. */
function hearThrough(random: Random, samples: Float32Array, selfNoise: number): void {
  const lowStep = 1 - Math.exp((-2 * Math.PI * random.uniform(15, 120)) / SCENE_RATE_HZ);
  const highStep = 1 - Math.exp((-2 * Math.PI * random.uniform(7000, 23_000)) / SCENE_RATE_HZ);
  let low = 0;
  let high = 0;
  for (let i = 0; i < samples.length; i += 1) {
    const value = samples[i] ?? 0;
    low += lowStep * (value - low);
    high += highStep * (value - low - high);
    const heard = high + selfNoise * random.gauss();
    samples[i] = Math.max(-32_768, Math.min(32_767, Math.round(heard * 32_768))) / 32_768;
  }
}
