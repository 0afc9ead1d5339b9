import { writeTag } from './chunkTag.ts';
import { encodeCues } from './wavCues.ts';
import type { WavCue } from './wavCues.ts';

/**
 * A WAV file of 16-bit PCM, which every recorder, editor and browser reads.
 * @param channels  one array a channel, all of one length, range -1..1; what lies beyond is clipped
 * @param sampleRateHz  integer, > 0
 * @param cues  moments that a sound editor shows, with their labels
 * @returns the whole file
 * @throws RangeError on no channel, unequal lengths, a rate out of range or more than 4 GiB
 */
export function encodeWav(
  channels: readonly Float32Array[],
  sampleRateHz: number,
  cues: readonly WavCue[] = [],
): Uint8Array<ArrayBuffer> {
  const [first] = channels;
  if (first === undefined || channels.length > 64) {
    throw new RangeError(`channels must hold 1..64 arrays, got ${channels.length}`);
  }
  if (channels.some((channel) => channel.length !== first.length)) {
    throw new RangeError(`channels must be of one length, got ${channels.map((c) => c.length).join(', ')}`);
  }
  if (!Number.isInteger(sampleRateHz) || sampleRateHz < 1 || sampleRateHz > 768_000) {
    throw new RangeError(`sampleRateHz must be an integer 1..768000, got ${sampleRateHz}`);
  }
  const bytesPerFrame = 2 * channels.length;
  const dataLength = first.length * bytesPerFrame;
  if (dataLength > 0xffffffff - 44) {
    throw new RangeError(`a WAV holds up to 4 GiB, got ${dataLength} bytes of sound`);
  }
  const cueBytes = encodeCues(cues);
  const bytes = new Uint8Array(44 + dataLength + cueBytes.length);
  const view = new DataView(bytes.buffer);
  writeTag(view, 0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  writeTag(view, 8, 'WAVE');
  writeTag(view, 12, 'fmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, channels.length, true);
  view.setUint32(24, sampleRateHz, true);
  view.setUint32(28, sampleRateHz * bytesPerFrame, true);
  view.setUint16(32, bytesPerFrame, true);
  view.setUint16(34, 16, true);
  writeTag(view, 36, 'data');
  view.setUint32(40, dataLength, true);
  channels.forEach((samples, channel) => {
    let offset = 44 + 2 * channel;
    for (const sample of samples) {
      // The same scale as on reading: full scale is 32768, the largest integer one step below it.
      const value = Math.max(-32_768, Math.min(32_767, Math.round(sample * 32_768)));
      view.setInt16(offset, value, true);
      offset += bytesPerFrame;
    }
  });
  // Frames of 16 bits are even in length, so the next chunk needs no padding before it.
  bytes.set(cueBytes, 44 + dataLength);
  return bytes;
}
