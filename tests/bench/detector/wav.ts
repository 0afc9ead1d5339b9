/** Sound read from a file: mono, -1..1. */
export interface WavSound {
  readonly sampleRateHz: number;
  readonly samples: Float32Array;
}

/** Reads 16-bit linear PCM, first channel; null for any other file. */
export function readWav(bytes: Buffer): WavSound | null {
  if (bytes.length < 44 || bytes.toString('latin1', 0, 4) !== 'RIFF') return null;
  let at = 12;
  let channels = 0;
  let sampleRateHz = 0;
  while (at + 8 <= bytes.length) {
    const name = bytes.toString('latin1', at, at + 4);
    const size = bytes.readUInt32LE(at + 4);
    if (name === 'fmt ') {
      if (bytes.readUInt16LE(at + 8) !== 1 || bytes.readUInt16LE(at + 22) !== 16) return null;
      channels = bytes.readUInt16LE(at + 10);
      sampleRateHz = bytes.readUInt32LE(at + 12);
    }
    if (name === 'data' && channels > 0) {
      // A stream written without knowing its length states too large a size.
      const end = Math.min(bytes.length, at + 8 + size);
      const samples = new Float32Array(Math.floor((end - at - 8) / (2 * channels)));
      for (let i = 0; i < samples.length; i += 1) {
        samples[i] = bytes.readInt16LE(at + 8 + 2 * channels * i) / 32768;
      }
      return { sampleRateHz, samples };
    }
    at += 8 + size + (size % 2);
  }
  return null;
}

/** 16-bit linear PCM, mono. Values outside -1..1 are clipped. */
export function writeWav(samples: Float32Array, sampleRateHz: number): Buffer {
  const bytes = Buffer.alloc(44 + 2 * samples.length);
  bytes.write('RIFF', 0, 'latin1');
  bytes.writeUInt32LE(36 + 2 * samples.length, 4);
  bytes.write('WAVEfmt ', 8, 'latin1');
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(sampleRateHz, 24);
  bytes.writeUInt32LE(2 * sampleRateHz, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36, 'latin1');
  bytes.writeUInt32LE(2 * samples.length, 40);
  for (let i = 0; i < samples.length; i += 1) {
    const value = Math.round(samples[i] * 32768);
    bytes.writeInt16LE(Math.max(-32768, Math.min(32767, value)), 44 + 2 * i);
  }
  return bytes;
}
