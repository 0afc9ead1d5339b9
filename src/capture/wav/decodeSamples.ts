import { viewOf } from './chunkTag.ts';
import type { WavFormat } from './wavFormat.ts';

/**
 * Turns whole frames of a WAV into one array a channel.
 * @param bytes  whole frames as they lie in the file
 * @param format  how they are coded
 * @returns one Float32Array a channel, nominal range -1..1; a float that is not finite becomes 0
 * @throws RangeError when the bytes are no whole number of frames
 */
export function decodeSamples(bytes: Uint8Array, format: WavFormat): Float32Array<ArrayBuffer>[] {
  return Array.from({ length: format.channelCount }, (_, channel) => {
    const samples = new Float32Array(bytes.length / format.bytesPerFrame);
    decodeChannel(bytes, format, channel, samples);
    return samples;
  });
}

/**
 * The same for one channel.
 * @param samples  is filled from the first place on
 * @returns how many samples there are
 * @throws RangeError when the bytes are no whole number of frames
 */
export function decodeChannel(
  bytes: Uint8Array,
  format: WavFormat,
  channel: number,
  samples: Float32Array,
): number {
  const frames = bytes.length / format.bytesPerFrame;
  if (!Number.isInteger(frames)) {
    throw new RangeError(`bytes.length must be a multiple of ${format.bytesPerFrame}, got ${bytes.length}`);
  }
  const sampleAt = sampleReader(viewOf(bytes), format);
  let offset = (channel * format.containerBits) / 8;
  for (let i = 0; i < frames; i += 1, offset += format.bytesPerFrame) samples[i] = sampleAt(offset);
  return frames;
}

/** Full scale is 2^(bits - 1) for every integer coding, so that the smallest integer is exactly -1. */
function sampleReader(view: DataView, format: WavFormat): (offset: number) => number {
  if (format.coding === 'float') {
    return format.containerBits === 32
      ? (offset) => finite(view.getFloat32(offset, true))
      : (offset) => finite(view.getFloat64(offset, true));
  }
  switch (format.containerBits) {
    case 8:
      // The one unsigned coding of WAV: silence is 128.
      return (offset) => (view.getUint8(offset) - 128) / 128;
    case 16:
      return (offset) => view.getInt16(offset, true) / 32_768;
    case 24:
      return (offset) => (view.getUint16(offset, true) + view.getInt8(offset + 2) * 65_536) / 8_388_608;
    default:
      return (offset) => view.getInt32(offset, true) / 2_147_483_648;
  }
}

function finite(value: number): number {
  // One NaN would stay in every recursive filter downstream for ever.
  return Number.isFinite(value) ? value : 0;
}
