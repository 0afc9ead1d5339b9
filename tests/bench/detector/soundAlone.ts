import { COMPANY, type Company } from './companySounds.ts';
import { mix, pinkNoise } from './noises.ts';
import { Random } from './random.ts';
import { reverberate } from './reverberation.ts';
import { talk } from './talk.ts';
import { asRecorded, VARIED_WORLD } from './variedWorld.ts';
import type { Voices } from './voices/voices.ts';
import type { WavSound } from './wav.ts';
import type { WorldEntry } from './worldSound.ts';

/** What can sound without a fork. */
export interface SoundsAlone {
  /** Names of the sounds of each kind; they take turns. */
  readonly kinds: Readonly<Record<string, readonly string[]>>;
  /** A maker for each name but `talk`, which the voices speak. */
  readonly company: Company;
  readonly voices: Voices;
}

/** What is generated here. */
export const generatedAlone = (voices: Voices): SoundsAlone => ({
  kinds: { talk: ['talk'], music: ['guitar', 'singing', 'whistling'], taps: ['taps'], water: ['water'] },
  company: COMPANY,
  voices,
});

/** Forks that are listened for, one a piece, in turn. */
const FORKS_HZ = [256, 320, 384, 426.6, 480, 512] as const;
/** After each round of forks the makers of music move on by one, so that each meets every fork. */
const PIECES_A_ROUND = FORKS_HZ.length;

/** A stretch of sound in which no fork and no column sound. */
export interface AlonePiece {
  readonly kind: string;
  /** What sounds, e.g. guitar. */
  readonly what: string;
  readonly seed: number;
  /** The stamp of the fork that is listened for. */
  readonly nominalHz: number;
  make(): WavSound;
}

/**
 * The pieces of one kind, as many as fill so many minutes. The sounds are tuned near the fork's pitch, an octave or two
 * below, or anywhere: no note is kept away from it.
 * @param pieceS  length of a piece, s
 */
export function piecesAlone(
  sounds: SoundsAlone,
  kind: string,
  minutes: number,
  pieceS: number,
  first: number,
): AlonePiece[] {
  return Array.from({ length: Math.ceil((minutes * 60) / pieceS) }, (_, index) => {
    const nominalHz = FORKS_HZ[index % PIECES_A_ROUND];
    const turn = index + Math.floor(index / PIECES_A_ROUND);
    const names = sounds.kinds[kind];
    const what = names[turn % names.length];
    const seed = first + index;
    const durationS = Math.min(pieceS, minutes * 60 - index * pieceS);
    return { kind, what, seed, nominalHz, make: () => makeAlone(sounds, what, seed, durationS, nominalHz) };
  });
}

/** Pieces of music, a minute each, as recordings of the varied world to learn from. @param first  seed */
export function musicToLearnFrom(first: number, minutes: number, voices: Voices): WorldEntry[] {
  return piecesAlone(generatedAlone(voices), 'music', minutes, 60, first).map((piece) => {
    const { what, seed, nominalHz } = piece;
    const recording = { world: VARIED_WORLD, condition: `${what}-alone`, seed };
    const truth = { ...recording, durationS: 60, nominalHz, passages: [] };
    return { ...recording, make: () => ({ ...piece.make(), truth }) };
  });
}

function makeAlone(
  { company, voices }: SoundsAlone,
  what: string,
  seed: number,
  durationS: number,
  nominalHz: number,
): WavSound {
  const random = new Random(seed).branch(`alone ${what}`);
  const sampleRateHz = random.pick([44100, 48000]);
  const length = Math.floor(durationS * sampleRateHz);
  const dry =
    what === 'talk'
      ? talk(random.branch('talk'), length, sampleRateHz, random.integer(1, 5), voices)
      : company[what](random.branch(what), length, sampleRateHz, nominalHz);
  const echoS = random.uniform(0.15, 0.9);
  const samples = reverberate(random.branch('hall'), dry, sampleRateHz, echoS, random.uniform(-3, 8));
  const roomDb = random.uniform(-40, -14);
  mix(samples, pinkNoise(random.branch('pink'), length, sampleRateHz), 10 ** (roomDb / 20));
  const quarter = samples.map((value) => 0.25 * value);
  return { sampleRateHz, samples: asRecorded(random.branch('microphone'), quarter, sampleRateHz) };
}
