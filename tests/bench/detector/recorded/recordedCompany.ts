import type { Company, CompanySound } from '../companySounds.ts';
import { between } from '../interpolation.ts';
import { rootMeanSquare, unitRms } from '../noises.ts';
import type { Random } from '../random.ts';
import { play, type Note, type Piece } from './playedNotes.ts';
import { CLIP_KINDS, CLIP_RATE_HZ, type ClipKind, type Half, type SoundFiles } from './soundFiles.ts';

/** General MIDI's instruments, from 0 (from memory): other ones for each half. */
const GUITARS: Record<Half, readonly number[]> = {
  // Nylon and jazz; steel and clean electric.
  learn: [24, 26],
  tell: [25, 27],
};
const INSTRUMENTS: Record<Half, readonly number[]> = {
  // Grand piano, celesta, marimba, violin, choir, trumpet, oboe, flute, ocarina.
  learn: [0, 8, 12, 40, 52, 56, 68, 73, 79],
  // Bright piano, music box, xylophone, viola, voices, horn, clarinet, recorder, whistle.
  tell: [1, 10, 13, 41, 53, 60, 71, 74, 78],
};

/** How clips of a kind follow one another, ranges of a pause in s and of the playing speed in semitones. */
const MANNERS: Record<ClipKind, { readonly pauseS: number; readonly semitones: number }> = {
  guitar: { pauseS: 0.5, semitones: 12 },
  music: { pauseS: 0, semitones: 2 },
  glass: { pauseS: 1, semitones: 8 },
  water: { pauseS: 0.3, semitones: 2 },
  machine: { pauseS: 0, semitones: 2 },
  animals: { pauseS: 1.5, semitones: 3 },
  taps: { pauseS: 0.8, semitones: 2 },
};

/**
 * Recorded sounds to stand beside a fork: clips of seven kinds, and instruments whose notes were sampled one by one.
 * @param half  which of the files and instruments may sound
 */
export function recordedCompany(sounds: SoundFiles, half: Half): Company {
  const clips: Record<string, CompanySound> = {};
  for (const kind of CLIP_KINDS)
    clips[kind] = (random, length, rateHz) => clipSeries(random, length, rateHz, sounds, kind, half);
  const played =
    (programs: readonly number[]): CompanySound =>
    (random, length, rateHz, forkHz) => {
      const piece = drawPiece(random, random.pick(programs), length / rateHz, forkHz);
      const samples = new Float32Array(length);
      addClip(samples, 0, play(piece, sounds.soundFont()), CLIP_RATE_HZ / rateHz, 1);
      return unitRms(samples);
    };
  const strings = played(GUITARS[half]);
  return {
    ...clips,
    guitar: (random, ...rest) => (random.chance(0.25) ? clips.guitar : strings)(random, ...rest),
    instruments: played(INSTRUMENTS[half]),
  };
}

/** Clips of one kind, one after the other. Of a long one a stretch is taken that begins anywhere. */
function clipSeries(
  random: Random,
  length: number,
  rateHz: number,
  sounds: SoundFiles,
  kind: ClipKind,
  half: Half,
): Float32Array {
  const { pauseS, semitones } = MANNERS[kind];
  const paths = sounds.list(kind, half);
  const result = new Float32Array(length);
  let at = Math.floor(random.uniform(0, 0.5) * rateHz);
  while (at < length) {
    const whole = sounds.clip(random.pick(paths));
    const from = Math.floor(random.next() * Math.max(0, whole.length - 30 * CLIP_RATE_HZ));
    const clip = whole.subarray(from, from + 30 * CLIP_RATE_HZ);
    const rms = rootMeanSquare(clip);
    const speed = 2 ** (random.uniform(-semitones, semitones) / 12);
    const gain = Math.exp(0.3 * random.gauss()) / Math.max(1e-4, rms);
    at += addClip(result, at, clip, (speed * CLIP_RATE_HZ) / rateHz, gain);
    at += Math.floor(random.uniform(0, pauseS) * rateHz) + 1;
  }
  return unitRms(result);
}

/** Fades in and out over this, s: a clip that is cut out of a longer one would click. */
const FADE_S = 0.005;

/** Adds a clip. @param step  samples of the clip for each of the target's @returns how many of the target's it takes */
function addClip(target: Float32Array, at: number, clip: Float32Array, step: number, gain: number): number {
  const count = Math.max(0, Math.floor((clip.length - 4) / step));
  const fade = (FADE_S * CLIP_RATE_HZ) / step;
  for (let i = 0; i < count && at + i < target.length; i += 1) {
    const edge = Math.min(1, (i + 1) / fade, (count - i) / fade);
    target[at + i] += gain * edge * between(clip, 1 + i * step);
  }
  return count;
}

/** Notes near the fork's pitch or an octave or two below, one at a time or in chords; tuned anyhow. */
function drawPiece(random: Random, program: number, durationS: number, forkHz: number): Piece {
  const forkPitch = 69 + 12 * Math.log2(forkHz / 440);
  const nearest = Math.round(forkPitch);
  const beatS = random.uniform(0.18, 0.8);
  const holdBeats = random.uniform(0.8, 4);
  const notes: Note[] = [];
  for (let startS = 0.2; startS < durationS; startS += beatS * random.pick([0.5, 1, 1, 1, 2])) {
    const count = random.chance(0.25) ? 3 : 1;
    for (let i = 0; i < count; i += 1) {
      const octaves = random.pick([-2, -1, -1, 0, 0]);
      notes.push({
        startS: startS + 0.02 * i,
        durationS: beatS * holdBeats,
        pitch: Math.max(12, Math.min(120, nearest + 12 * octaves + random.integer(-7, 7))),
        velocity: random.integer(50, 120),
      });
    }
  }
  return { program, detuning: forkPitch - nearest + random.uniform(-0.5, 0.5), notes };
}
