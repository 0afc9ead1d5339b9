import { ChannelJudge } from './channelJudge.ts';
import type { SampleBlock, SoundCue } from './soundSource.ts';
import { WavError } from './wav.ts';
import type { FileRemark } from './wav.ts';

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
  /** What should be known of the file, such as a cut-off end. */
  readonly remarks: readonly FileRemark[];
  blocks(blockFrames: number): AsyncIterable<SampleBlock>;
}

/**
 * Has the browser decode a compressed recording.
 * @throws WavError naming what is wrong with the file (rejects)
 */
export async function decodeRecording(file: Blob): Promise<OpenRecording> {
  if (file.size > MOST_BYTES) {
    const size = { bytes: file.size, mostBytes: MOST_BYTES };
    throw new WavError({ code: 'recording-too-long', fault: 'size', ...size }, false);
  }
  const bytes = await file.arrayBuffer();
  const buffer = await decode(bytes);
  if (buffer.length === 0) {
    throw new WavError({ code: 'empty-recording', fault: 'no-sound' }, false);
  }
  const channels = Array.from({ length: buffer.numberOfChannels }, (_, i) => buffer.getChannelData(i));
  const judge = new ChannelJudge(channels.length);
  judge.add(channels);
  const chosen = judge.choose();
  const samples = channels[chosen.channel] ?? new Float32Array(0);
  return {
    sampleRateHz: buffer.sampleRate,
    frameCount: samples.length,
    remarks: chosen.reason === null ? [] : [{ code: 'one-channel', reason: chosen.reason }],
    blocks: (blockFrames) => cut(samples, blockFrames),
  };
}

async function decode(bytes: ArrayBuffer): Promise<AudioBuffer> {
  try {
    return await new OfflineAudioContext(1, 1, DECODED_RATE_HZ).decodeAudioData(bytes);
  } catch {
    throw new WavError({ code: 'not-audio', fault: 'not-decoded' }, false);
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
