import { writeFileSync } from 'node:fs';
import { encodeWav } from '../../src/capture/wav.ts';

/** Frames a second of every generated file, unless told otherwise. */
export const TEST_RATE_HZ = 48_000;

/**
 * Writes mono (one array) or several channels as a WAV of 16-bit PCM, the coding that a browser takes as its
 * microphone.
 */
export function writeWavFile(
  path: string,
  channels: Float32Array | readonly Float32Array[],
  sampleRateHz: number = TEST_RATE_HZ,
): void {
  writeFileSync(path, encodeWav(channels instanceof Float32Array ? [channels] : channels, sampleRateHz));
}

/**
 * The same for a file that plays as a microphone: half a second of silence first, because the first moments
 * are lost, and a second of it after, because the browser repeats the file's last 10 ms for ever.
 */
export function writeMicrophoneFile(
  path: string,
  samples: Float32Array,
  sampleRateHz: number = TEST_RATE_HZ,
): void {
  const lead = Math.round(sampleRateHz / 2);
  const padded = new Float32Array(lead + samples.length + sampleRateHz);
  padded.set(samples, lead);
  writeWavFile(path, padded, sampleRateHz);
}
