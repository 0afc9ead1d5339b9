import { addBurst, mix, pinkNoise, unitRms } from './noises.ts';
import type { Random } from './random.ts';
import { TractResonance } from './voices/resonators.ts';

/**
 * Something that sounds in a room beside a fork and is no fork.
 * @returns so many samples of unit rms; the same random stream gives the same sound
 */
export type CompanySound = (random: Random, length: number, rateHz: number, forkHz: number) => Float32Array;

/** Sounds by their names. */
export type Company = Readonly<Record<string, CompanySound>>;

/** What is generated here. */
export const COMPANY = {
  guitar: plucked,
  singing: sung,
  whistling: whistled,
  water: poured,
  taps: tapped,
} as const satisfies Company;

export type CompanyName = keyof typeof COMPANY;

/** Pitch of a note near the fork's or an octave or two below, so that notes and harmonics meet the fork. */
function notePitch(random: Random, tuningHz: number): number {
  const octaves = random.pick([-2, -1, -1, 0, 0]);
  return tuningHz * 2 ** (octaves + random.integer(-7, 7) / 12);
}

/** Strings that are plucked, one at a time or in chords. */
function plucked(random: Random, length: number, rateHz: number, forkHz: number): Float32Array {
  const result = new Float32Array(length);
  const tuningHz = forkHz * 2 ** (random.uniform(-0.5, 0.5) / 12);
  const beatS = random.uniform(0.18, 0.8);
  for (let timeS = 0.2; timeS * rateHz < length; timeS += beatS * random.pick([0.5, 1, 1, 1, 2])) {
    const notes = random.chance(0.25) ? 3 : 1;
    for (let i = 0; i < notes; i += 1) {
      const pitchHz = notePitch(random, tuningHz);
      const level = Math.exp(0.4 * random.gauss());
      const decayS = random.uniform(0.3, 2.5);
      const slope = random.uniform(0.8, 1.8);
      for (let order = 1; order <= 9 && order * pitchHz < 0.4 * rateHz; order += 1) {
        addRinging(result, rateHz, timeS + 0.02 * i, {
          level: (level * Math.abs(Math.sin(0.6 * order))) / order ** slope,
          frequencyHz: order * pitchHz * (1 + 0.0001 * order * order),
          decayS: decayS / order ** 0.7,
        });
      }
    }
  }
  return unitRms(result);
}

/** One damped tone, by a phasor that turns and shrinks; it begins within 3 ms and ends 60 dB down. */
function addRinging(
  target: Float32Array,
  rateHz: number,
  startS: number,
  { level, frequencyHz, decayS }: { level: number; frequencyHz: number; decayS: number },
): void {
  const first = Math.round(startS * rateHz);
  const last = Math.min(target.length, first + Math.ceil(6.9 * decayS * rateHz));
  const shrink = Math.exp(-1 / (decayS * rateHz));
  const turn = (2 * Math.PI * frequencyHz) / rateHz;
  const [cos, sin] = [shrink * Math.cos(turn), shrink * Math.sin(turn)];
  let [re, im] = [level, 0];
  for (let i = first; i < last; i += 1) {
    target[i] += im * Math.min(1, (i - first) / (0.003 * rateHz));
    [re, im] = [re * cos - im * sin, re * sin + im * cos];
  }
}

/** A voice that holds notes, with vibrato and all its harmonics. */
function sung(random: Random, length: number, rateHz: number, forkHz: number): Float32Array {
  const weights = Array.from({ length: 10 }, (_, i) => Math.exp(0.8 * random.gauss()) / (i + 1));
  return held(random, length, rateHz, forkHz * 2 ** (random.uniform(-0.5, 0.5) / 12), weights, 0.45);
}

/** One partial and breath. */
function whistled(random: Random, length: number, rateHz: number, forkHz: number): Float32Array {
  const tone = held(random, length, rateHz, forkHz * random.uniform(0.9, 1.4), [1, 0.02], 0.2);
  mix(tone, pinkNoise(random.branch('breath'), length, rateHz), 0.03);
  return tone;
}

/**
 * Notes one after another, each swelling and fading.
 * @param weights  of the harmonics
 * @param semitones  depth of the vibrato at most
 */
function held(
  random: Random,
  length: number,
  rateHz: number,
  tuningHz: number,
  weights: readonly number[],
  semitones: number,
): Float32Array {
  const result = new Float32Array(length);
  const vibratoHz = random.uniform(4.5, 6.5);
  const depth = random.uniform(0, semitones);
  let phase = 0;
  let pitchHz = notePitch(random, tuningHz);
  for (let at = 0; at < length;) {
    const targetHz =
      weights.length > 2 ? notePitch(random, tuningHz) : tuningHz * 2 ** (random.integer(-7, 7) / 12);
    const noteS = random.uniform(0.25, 1.8);
    const level = Math.exp(0.3 * random.gauss());
    const count = Math.round(noteS * rateHz);
    for (let i = 0; i < count && at < length; i += 1, at += 1) {
      pitchHz += (targetHz - pitchHz) / (0.03 * rateHz);
      const t = at / rateHz;
      phase += (2 * Math.PI * pitchHz * 2 ** ((depth * Math.sin(2 * Math.PI * vibratoHz * t)) / 12)) / rateHz;
      const swell = Math.min(1, i / (0.06 * rateHz), (count - i) / (0.08 * rateHz));
      for (let k = 0; k < weights.length; k += 1)
        result[at] += level * swell * weights[k] * Math.sin((k + 1) * phase);
    }
    at += Math.round((random.chance(0.3) ? random.uniform(0.1, 1) : 0) * rateHz);
  }
  return unitRms(result);
}

/** Water that is poured: bubbles, splashing, and the vessel's own tone that rises as it fills. */
function poured(random: Random, length: number, rateHz: number, forkHz: number): Float32Array {
  const bubbles = new Float32Array(length);
  const perSecond = random.uniform(40, 250);
  for (let timeS = 0; timeS * rateHz < length; timeS -= Math.log(1 - random.next()) / perSecond) {
    const frequencyHz = random.uniform(0.5, 4) * random.uniform(0.6, 2) * 500;
    const decayS = random.uniform(0.005, 0.04);
    addRinging(bubbles, rateHz, timeS, { level: Math.exp(random.gauss()), frequencyHz, decayS });
  }
  unitRms(bubbles);
  const vessel = new TractResonance(rateHz, random.uniform(15, 80));
  const [fromHz, toHz] = [forkHz * random.uniform(0.5, 1), forkHz * random.uniform(1, 2)];
  const noise = pinkNoise(random.branch('splash'), length, rateHz);
  const filling = new Float32Array(length);
  for (let i = 0; i < length; i += 1) {
    if (i % 64 === 0) vessel.tune(fromHz * (toHz / fromHz) ** (i / length));
    filling[i] = vessel.next(noise[i]);
  }
  mix(bubbles, unitRms(filling), random.uniform(0.2, 1.5));
  const stopS = random.uniform(2, 6);
  // It is poured by fits and starts.
  for (let i = 0; i < length; i += 1) {
    bubbles[i] *= 0.15 + 0.85 * Math.min(1, Math.max(0, 3 * Math.sin((Math.PI * i) / rateHz / stopS)));
  }
  return unitRms(bubbles);
}

/** Fingers on a table, keys and clicks. */
function tapped(random: Random, length: number, rateHz: number, forkHz: number): Float32Array {
  const result = new Float32Array(length);
  const perSecond = random.uniform(0.7, 5);
  const bodyHz = forkHz * random.uniform(0.6, 1.6);
  for (let timeS = 0.1; timeS * rateHz < length; timeS -= Math.log(1 - random.next()) / perSecond) {
    const level = Math.exp(0.5 * random.gauss());
    for (let mode = 0; mode < 5; mode += 1) {
      addBurst(result, rateHz, timeS, {
        level: level * random.uniform(0.2, 1),
        frequencyHz: mode === 0 ? bodyHz * random.uniform(0.97, 1.03) : random.uniform(100, 5000),
        decayS: mode === 0 ? random.uniform(0.005, 0.12) : random.uniform(0.001, 0.02),
      });
    }
  }
  return unitRms(result);
}
