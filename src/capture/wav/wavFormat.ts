import type { RecordingFault } from '../recordingFault.ts';

/** How the samples of a WAV file are coded and where they lie. */
export interface WavFormat {
  /** Whole hertz, 4000..768000. */
  readonly sampleRateHz: number;
  /** 1..64. */
  readonly channelCount: number;
  readonly coding: 'pcm' | 'float';
  /** Bits that one sample of one channel takes in the file: 8, 16, 24, 32 (pcm) or 32, 64 (float). */
  readonly containerBits: 8 | 16 | 24 | 32 | 64;
  readonly bytesPerFrame: number;
  /** First byte of the samples. */
  readonly dataOffset: number;
  /** Whole frames that are really in the file, >= 1. */
  readonly frameCount: number;
  /** True when the header promises more sound than the file holds: the end was cut off. */
  readonly truncated: boolean;
}

/** A file that can't be used as a WAV. */
export class WavError extends Error {
  override readonly name = 'WavError';
  /** Which failure the page names. */
  readonly code: RecordingFault['code'];

  /**
   * @param fault  what is wrong
   * @param isWav  true for a real WAV in a coding that this reader does not know; a browser may decode it
   */
  constructor(
    readonly fault: RecordingFault,
    readonly isWav: boolean,
  ) {
    super(`${fault.code}: ${fault.fault}`);
    this.code = fault.code;
  }
}
