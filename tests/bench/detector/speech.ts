import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mix, rootMeanSquare, unitRms } from './noises.ts';
import type { Random } from './random.ts';
import { readWav, type WavSound } from './wav.ts';

/** Where Debian's packages of spoken words put their files; absent on other systems, and then not used. */
const VOICE_FOLDERS = ['/usr/share/asterisk/sounds', '/usr/share/sounds/alsa'];
const NOT_SPEECH = /silence|beep|noise|jingle|tone\.wav|monkeys|\/letters\/|spy-/i;

const SENTENCES = [
  'Hold it a little higher and slide the tube down slowly.',
  'I think it was louder at sixteen centimetres, write that down.',
  'Who has the other fork? We need the one with five hundred and twelve.',
  'No, wait, you went past it. Go back a bit.',
  'Can somebody read the thermometer, please? It says twenty one and a half.',
  'We are already at the third one and they are still looking for the first.',
  'Do not hit it on the table, use the rubber block over there.',
  'How many more do we need before the end of the lesson?',
];

export type SpeechSource = 'recorded' | 'synthesised' | 'modelled';

let recordedFiles: string[] | null = null;
let sentences: WavSound[] | null = null;
const decoded = new Map<string, WavSound | null>();

/** Which talkers this machine offers: recorded voices, a speech synthesiser, or only our own model of a voice. */
export function speechSource(): SpeechSource {
  recordedFiles ??= VOICE_FOLDERS.flatMap(listWavs).sort();
  if (recordedFiles.length >= 20) return 'recorded';
  sentences ??= synthesise();
  return sentences.length > 0 ? 'synthesised' : 'modelled';
}

/**
 * Several people talking at once.
 * @param talkers  1, 2, 3…
 * @returns samples of unit rms
 */
export function talk(random: Random, length: number, rateHz: number, talkers: number): Float32Array {
  const result = new Float32Array(length);
  const source = speechSource();
  for (let i = 0; i < talkers; i += 1) {
    const voice = random.branch(`voice ${i}`);
    const said = oneTalker(voice, length, rateHz, source);
    if (source === 'recorded' && voice.chance(0.5)) raiseVoice(said, rateHz);
    mix(result, said, voice.uniform(0.4, 1));
  }
  return unitRms(result);
}

/**
 * Recorded prompts are spoken softly: in 10 Hz at 512 Hz they hold 22.5 dB less than in all (measured), where the
 * long-term spectrum of Byrne et al. 1994 gives 18.5 dB. A raised voice is nearer to it: what lies above 350 Hz is
 * lifted. Unit rms, in place.
 */
export function raiseVoice(samples: Float32Array, rateHz: number): void {
  const step = 1 - Math.exp((-2 * Math.PI * 350) / rateHz);
  let low = 0;
  for (let i = 0; i < samples.length; i += 1) {
    const value = samples[i];
    low += step * (value - low);
    samples[i] = value + 3 * (value - low);
  }
  unitRms(samples);
}

function oneTalker(random: Random, length: number, rateHz: number, source: SpeechSource): Float32Array {
  if (source === 'modelled') return modelledVoice(random, length, rateHz);
  const result = new Float32Array(length);
  // Playing faster or slower turns one voice into a child's or a man's.
  const speed = random.pick([0.62, 0.7, 0.85, 1, 1.15, 1.3, 1.4]) * random.uniform(0.97, 1.03);
  let at = Math.floor(random.uniform(-0.5, 1) * rateHz);
  while (at < length) {
    const clip = source === 'recorded' ? recordedClip(random) : random.pick(sentences ?? []);
    if (clip === null || clip.samples.length < 0.2 * clip.sampleRateHz) continue;
    const rms = rootMeanSquare(clip.samples);
    if (rms < 1e-3) continue;
    const step = (clip.sampleRateHz * speed) / rateHz;
    const count = Math.floor((clip.samples.length - 4) / step);
    const gain = Math.exp(0.25 * random.gauss()) / rms;
    for (let i = Math.max(0, -at); i < count && at + i < length; i += 1) {
      result[at + i] += gain * between(clip.samples, 1 + i * step);
    }
    at += count + Math.floor(random.uniform(0.03, random.chance(0.2) ? 1.5 : 0.3) * rateHz);
  }
  return unitRms(result);
}

/** Cubic (Catmull and Rom) interpolation. */
function between(samples: Float32Array, at: number): number {
  const j = Math.floor(at);
  const t = at - j;
  const a = samples[j - 1];
  const b = samples[j];
  const c = samples[j + 1];
  const d = samples[j + 2];
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}

function recordedClip(random: Random): WavSound | null {
  const path = random.pick(recordedFiles ?? []);
  let sound = decoded.get(path);
  if (sound === undefined) {
    sound = readWav(readFileSync(path));
    decoded.set(path, sound);
  }
  return sound;
}

function listWavs(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => path.endsWith('.wav') && !NOT_SPEECH.test(path));
}

function synthesise(): WavSound[] {
  const result: WavSound[] = [];
  try {
    for (const [i, sentence] of SENTENCES.entries()) {
      const voice = i % 2 === 0 ? 'en+f3' : 'en+m3';
      const bytes = execFileSync('espeak-ng', ['-v', voice, '-s', '150', '--stdout', sentence], {
        stdio: ['ignore', 'pipe', 'ignore'],
        maxBuffer: 1 << 25,
      });
      const sound = readWav(bytes);
      if (sound !== null) result.push(sound);
    }
  } catch {
    // No synthesiser on this machine: the modelled voice speaks instead.
    return [];
  }
  return result;
}

/** A voice of our own: glottal pulses with a wandering pitch through three wandering formants, and hisses. */
export function modelledVoice(random: Random, length: number, rateHz: number): Float32Array {
  const result = new Float32Array(length);
  const pitch = random.uniform(95, 290);
  const tract = random.uniform(0.9, 1.25);
  let at = 0;
  while (at < length) {
    const syllable = Math.floor(random.uniform(0.1, 0.35) * rateHz);
    const voiced = random.chance(0.8);
    const start = pitch * Math.exp(0.12 * random.gauss());
    const glide = 0.15 * random.gauss();
    const formants = [random.uniform(280, 800), random.uniform(900, 2300), random.uniform(2400, 3200)];
    const level = Math.exp(0.4 * random.gauss()) * (voiced ? 1 : 0.3);
    const poles = formants.map((formant) => {
      const radius = Math.exp((-Math.PI * (60 + 0.05 * formant)) / rateHz);
      return { b: 2 * radius * Math.cos((2 * Math.PI * formant * tract) / rateHz), c: -radius * radius };
    });
    const memory = poles.map(() => [0, 0] as [number, number]);
    let phase = random.next();
    let glottis = 0;
    for (let i = 0; i < syllable && at + i < length; i += 1) {
      const part = i / syllable;
      phase += (start * Math.exp(glide * part + 0.01 * Math.sin(30 * part))) / rateHz;
      let pulse = 0.05 * (random.next() - 0.5);
      if (!voiced) pulse = random.next() - 0.5;
      else if (phase >= 1) pulse += 8;
      phase %= 1;
      glottis += 0.08 * (pulse - glottis);
      let value = voiced ? glottis : pulse;
      poles.forEach((pole, j) => {
        const past = memory[j];
        const out = value * (1 - pole.b - pole.c) + pole.b * past[0] + pole.c * past[1];
        past[1] = past[0];
        past[0] = out;
        value = out;
      });
      result[at + i] = level * Math.sin(Math.PI * part) ** 0.5 * value;
    }
    at += syllable + Math.floor((random.chance(0.15) ? random.uniform(0.2, 1) : 0.02) * rateHz);
  }
  return unitRms(result);
}
