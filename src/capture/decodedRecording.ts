import { ChannelJudge } from './channelJudge.ts';
import type { SampleBlock, SoundCue } from './soundSource.ts';
import { WavError } from './wav.ts';

/** Compressed sound is decoded as a whole: above this the browser may run out of memory. */
const MOST_BYTES = 40 * 1024 * 1024;
/** The browser's decoder resamples to this rate. */
const DECODED_RATE_HZ = 48_000;

/** A recording as blocks, wherever its sound comes from. */
export interface OpenRecording {
  /** Marked moments; absent where the format holds none that can be read. */
  readonly cues?: readonly SoundCue[];
  readonly sampleRateHz: number;
  readonly frameCount: number;
  /** Something the person should know, such as a cut-off end. */
  readonly remark: string | null;
  blocks(blockFrames: number): AsyncIterable<SampleBlock>;
}

/**
 * Has the browser decode a compressed recording.
 * @throws WavError naming what is wrong with the file (rejects)
 */
export async function decodeRecording(file: Blob): Promise<OpenRecording> {
  if (file.size > MOST_BYTES) {
    throw new WavError(
      'recording-too-long',
      `This compressed recording has ${Math.round(file.size / 1048576)} MB, more than the ${MOST_BYTES / 1048576} MB that a browser can hold at once. Save it as a WAV, which may be any length, or cut it.`,
      false,
    );
  }
  const bytes = await file.arrayBuffer();
  const buffer = await decode(bytes);
  if (buffer.length === 0) {
    throw new WavError(
      'empty-recording',
      'The file holds no sound. Record again or choose another file.',
      false,
    );
  }
  const channels = Array.from({ length: buffer.numberOfChannels }, (_, i) => buffer.getChannelData(i));
  const judge = new ChannelJudge(channels.length);
  judge.add(channels);
  const chosen = judge.choose();
  const samples = channels[chosen.channel] ?? new Float32Array(0);
  return {
    sampleRateHz: buffer.sampleRate,
    frameCount: samples.length,
    remark: chosen.reason,
    blocks: (blockFrames) => cut(samples, blockFrames),
  };
}

async function decode(bytes: ArrayBuffer): Promise<AudioBuffer> {
  try {
    return await new OfflineAudioContext(1, 1, DECODED_RATE_HZ).decodeAudioData(bytes);
  } catch {
    throw new WavError(
      'not-audio',
      'The browser finds no sound that it can decode in this file. Choose a recording (WAV, MP3, M4A, OGG or WebM); a table of lengths is opened under Records.',
      false,
    );
  }
}

// eslint-disable-next-line @typescript-eslint/require-await -- the same shape as a file read piece by piece
async function* cut(
  samples: Float32Array,
  blockFrames: number,
): AsyncGenerator<SampleBlock, void, undefined> {
  for (let start = 0; start < samples.length; start += blockFrames) {
    yield { samples: samples.slice(start, start + blockFrames), startFrame: start, discontinuity: false };
  }
}
