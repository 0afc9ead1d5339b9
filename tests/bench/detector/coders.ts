import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readWav, writeWav, type WavSound } from './wav.ts';

/** A coder as phones write recordings with it, and what ffmpeg is told for it. */
export interface Coder {
  readonly name: string;
  readonly encoder: 'aac' | 'libopus';
  /** Its rate: AAC's is the recorder's, Opus has 48 kHz only. */
  readonly sampleRateHz: 44100 | 48000;
  readonly kilobits: number;
  /** Opus alone: made for talk, as in messages, or for any sound. */
  readonly application?: 'voip' | 'audio';
}

/** Recorders write AAC, messages and browsers Opus (common practice, no source). All are mono. */
export const CODERS: readonly Coder[] = [
  { name: 'AAC-LC, 64 kb/s, 44.1 kHz', encoder: 'aac', sampleRateHz: 44100, kilobits: 64 },
  { name: 'AAC-LC, 96 kb/s, 48 kHz', encoder: 'aac', sampleRateHz: 48000, kilobits: 96 },
  { name: 'AAC-LC, 128 kb/s, 48 kHz', encoder: 'aac', sampleRateHz: 48000, kilobits: 128 },
  {
    name: 'Opus for talk, 24 kb/s',
    encoder: 'libopus',
    sampleRateHz: 48000,
    kilobits: 24,
    application: 'voip',
  },
  { name: 'Opus, 32 kb/s', encoder: 'libopus', sampleRateHz: 48000, kilobits: 32, application: 'audio' },
  { name: 'Opus, 64 kb/s', encoder: 'libopus', sampleRateHz: 48000, kilobits: 64, application: 'audio' },
];

/** Which of these are installed: ffmpeg isn't needed for anything else. */
export function installedCoders(): readonly Coder[] {
  const { status, stdout } = spawnSync('ffmpeg', ['-hide_banner', '-encoders'], { encoding: 'utf8' });
  if (status !== 0) return [];
  return CODERS.filter(({ encoder }) => new RegExp(`^ A\\S+ ${encoder} `, 'm').test(stdout));
}

/**
 * Writes a recording with a coder and reads it again.
 * @returns the same stretch of time, at the coder's rate
 * @throws Error with what ffmpeg said
 */
export function throughCoder({ samples, sampleRateHz }: WavSound, coder: Coder): WavSound {
  const folder = mkdtempSync(join(tmpdir(), 'coded-'));
  try {
    const [given, back] = [join(folder, 'given.wav'), join(folder, 'back.wav')];
    const file = join(folder, coder.encoder === 'aac' ? 'coded.m4a' : 'coded.ogg');
    writeFileSync(given, writeWav(samples, sampleRateHz));
    const application = coder.application === undefined ? [] : ['-application', coder.application];
    const rate = ['-ar', String(coder.sampleRateHz), '-ac', '1'];
    ffmpeg([given, '-c:a', coder.encoder, '-b:a', `${coder.kilobits}k`, ...application, ...rate, file]);
    ffmpeg([file, '-c:a', 'pcm_s16le', back]);
    const sound = readWav(readFileSync(back));
    if (sound === null) throw new Error('ffmpeg wrote no 16-bit linear PCM.');
    return sound;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function ffmpeg(parameters: readonly string[]): void {
  const { status, stderr } = spawnSync('ffmpeg', ['-v', 'error', '-y', '-i', ...parameters], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`ffmpeg: ${stderr}`);
}
