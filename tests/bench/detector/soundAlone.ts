import { COMPANY } from './companySounds.ts';
import { mix, pinkNoise } from './noises.ts';
import { Random } from './random.ts';
import { reverberate } from './reverberation.ts';
import { talk } from './talk.ts';
import { asRecorded, VARIED_WORLD } from './variedWorld.ts';
import type { Voices } from './voices/voices.ts';
import type { WavSound } from './wav.ts';
import type { WorldEntry } from './worldSound.ts';

export const ALONE_KINDS = ['talk', 'music', 'taps', 'water'] as const;

export type AloneKind = (typeof ALONE_KINDS)[number];

const MUSIC = ['guitar', 'singing', 'whistling'] as const;
/** Forks that are listened for, one a piece, in turn. */
const FORKS_HZ = [256, 320, 384, 426.6, 480, 512] as const;
/** After each round of forks the makers of music move on by one, so that each meets every fork. */
const PIECES_A_ROUND = FORKS_HZ.length;

/** A stretch of sound in which no fork and no column sound. */
export interface AlonePiece {
  readonly kind: AloneKind;
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
  kind: AloneKind,
  minutes: number,
  pieceS: number,
  first: number,
  voices: Voices,
): AlonePiece[] {
  return Array.from({ length: Math.ceil((minutes * 60) / pieceS) }, (_, index) => {
    const nominalHz = FORKS_HZ[index % PIECES_A_ROUND];
    const turn = index + Math.floor(index / PIECES_A_ROUND);
    const what = kind === 'music' ? MUSIC[turn % MUSIC.length] : kind;
    const seed = first + index;
    const durationS = Math.min(pieceS, minutes * 60 - index * pieceS);
    return { kind, what, seed, nominalHz, make: () => makeAlone(what, seed, durationS, nominalHz, voices) };
  });
}

/** Pieces of music, a minute each, as recordings of the varied world to learn from. @param first  seed */
export function musicToLearnFrom(first: number, minutes: number, voices: Voices): WorldEntry[] {
  return piecesAlone('music', minutes, 60, first, voices).map((piece) => {
    const { what, seed, nominalHz } = piece;
    const recording = { world: VARIED_WORLD, condition: `${what}-alone`, seed };
    const truth = { ...recording, durationS: 60, nominalHz, passages: [] };
    return { ...recording, make: () => ({ ...piece.make(), truth }) };
  });
}

function makeAlone(
  what: 'talk' | keyof typeof COMPANY,
  seed: number,
  durationS: number,
  nominalHz: number,
  voices: Voices,
): WavSound {
  const random = new Random(seed).branch(`alone ${what}`);
  const sampleRateHz = random.pick([44100, 48000]);
  const length = Math.floor(durationS * sampleRateHz);
  const dry =
    what === 'talk'
      ? talk(random.branch('talk'), length, sampleRateHz, random.integer(1, 5), voices)
      : COMPANY[what](random.branch(what), length, sampleRateHz, nominalHz);
  const echoS = random.uniform(0.15, 0.9);
  const samples = reverberate(random.branch('hall'), dry, sampleRateHz, echoS, random.uniform(-3, 8));
  const roomDb = random.uniform(-40, -14);
  mix(samples, pinkNoise(random.branch('pink'), length, sampleRateHz), 10 ** (roomDb / 20));
  const quarter = samples.map((value) => 0.25 * value);
  return { sampleRateHz, samples: asRecorded(random.branch('microphone'), quarter, sampleRateHz) };
}
