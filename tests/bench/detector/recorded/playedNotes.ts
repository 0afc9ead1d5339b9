import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CLIP_RATE_HZ } from './soundFiles.ts';

/** One note of a piece. Pitches are MIDI's: 69 is 440 Hz, a semitone is 1. */
export interface Note {
  readonly startS: number;
  readonly durationS: number;
  readonly pitch: number;
  /** How hard it is struck, 1..127. */
  readonly velocity: number;
}

/** A piece for one instrument. */
export interface Piece {
  /** General MIDI's number, from 0. */
  readonly program: number;
  /** By how much all of it is out of tune, semitones, −2..2. */
  readonly detuning: number;
  readonly notes: readonly Note[];
}

/** Ticks of a quarter note, which lasts half a second where nothing else is said. */
const TICKS_PER_S = 960;
const WHEEL_MIDDLE = 8192;
const WHEEL_SEMITONES = 2;

/**
 * Plays a piece on sampled instruments, dry, mono.
 * @param soundFont  path of a SoundFont 2 file
 * @returns samples at CLIP_RATE_HZ; the last notes ring out
 * @throws Error with what fluidsynth said
 */
export function play(piece: Piece, soundFont: string): Float32Array {
  const folder = mkdtempSync(join(tmpdir(), 'piece-'));
  try {
    const [song, sound] = [join(folder, 'piece.mid'), join(folder, 'piece.raw')];
    writeFileSync(song, midiFile(piece));
    const dry = ['-R', '0', '-C', '0'];
    const to = ['-r', String(CLIP_RATE_HZ), '-O', 'float', '-T', 'raw', '-F', sound];
    const { status, stderr } = spawnSync('fluidsynth', ['-niq', ...dry, ...to, soundFont, song], {
      encoding: 'utf8',
    });
    if (status !== 0) throw new Error(`fluidsynth: ${stderr}`);
    const bytes = readFileSync(sound);
    const both = new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
    return Float32Array.from({ length: both.length / 2 }, (_, i) => (both[2 * i] + both[2 * i + 1]) / 2);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A Standard MIDI File of format 0 (MIDI Manufacturers Association, RP-001). */
export function midiFile({ program, detuning, notes }: Piece): Buffer {
  const wheel = Math.round(
    WHEEL_MIDDLE * (1 + Math.max(-0.999, Math.min(0.999, detuning / WHEEL_SEMITONES))),
  );
  const events = notes.flatMap(({ startS, durationS, pitch, velocity }) => [
    { tick: Math.round(startS * TICKS_PER_S), bytes: [0x90, pitch, velocity] },
    { tick: Math.round((startS + durationS) * TICKS_PER_S), bytes: [0x80, pitch, 0] },
  ]);
  events.sort((a, b) => a.tick - b.tick);
  const track: number[] = [0, 0xc0, program, 0, 0xe0, wheel & 0x7f, wheel >> 7];
  let now = 0;
  for (const { tick, bytes } of events) {
    track.push(...variableLength(tick - now), ...bytes);
    now = tick;
  }
  track.push(0, 0xff, 0x2f, 0);
  const head = Buffer.from([0, 0, 0, 6, 0, 0, 0, 1, 0, 0]);
  head.writeUInt16BE(TICKS_PER_S / 2, 8);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(track.length);
  return Buffer.concat([Buffer.from('MThd'), head, Buffer.from('MTrk'), length, Buffer.from(track)]);
}

/** Seven bits a byte, the highest first, all but the last with their eighth bit set. @param value  0..2²⁸ − 1 */
export function variableLength(value: number): number[] {
  const bytes = [value & 0x7f];
  for (let rest = value >> 7; rest > 0; rest >>= 7) bytes.unshift((rest & 0x7f) | 0x80);
  return bytes;
}
