import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WavReader, encodeWav, readCues } from '../../../src/capture/wav.ts';
import { cuesBySpecification } from '../../support/cuesBySpecification.ts';

const SOUND = new Float32Array(1001).fill(0.25);

const readBack = (bytes: Uint8Array) =>
  readCues((offset, length) => Promise.resolve(bytes.subarray(offset, offset + length)), bytes.length);

describe('cue points of a WAV', () => {
  const cues = [
    { frame: 12, label: 'Mark 1, 512 Hz, closed, 15.80 cm' },
    { frame: 700, label: 'Mark 2' },
    { frame: 1001, label: '' },
  ];

  it('are what the specification says, as an independent reader finds them', () => {
    const bytes = Buffer.from(encodeWav([SOUND], 48_000, cues));
    expect(cuesBySpecification(bytes)).toEqual({ frames: 1001, cues });
  });

  it('come back, beside the very same sound', async () => {
    const bytes = encodeWav([SOUND], 48_000, cues);
    expect(await readBack(bytes)).toEqual(cues);
    const reader = await WavReader.fromBytes(bytes);
    expect(reader.format).toMatchObject({ frameCount: 1001, truncated: false });
    expect((await reader.readChannels(0, 1001))[0]).toEqual(SOUND);
  });

  it('are found before the sound too, by a label in UTF-8, and a point without one', async () => {
    const plain = encodeWav([SOUND], 48_000);
    const marked = encodeWav([SOUND], 48_000, [{ frame: 5, label: 'n_n' }]);
    const chunks = marked.slice(plain.length);
    chunks.set(new TextEncoder().encode('é'), chunks.lastIndexOf('_'.charCodeAt(0)));
    const moved = new Uint8Array([...plain.slice(0, 36), ...chunks, ...plain.slice(36)]);
    expect(await readBack(moved)).toEqual([{ frame: 5, label: 'né' }]);
  });

  it('never throw or hang on a damaged file: the sound counts', async () => {
    const good = encodeWav([SOUND.subarray(0, 8)], 48_000, cues);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(good.length - 1), fc.nat(255)), { maxLength: 12 }),
        fc.nat(good.length),
        async (changes, length) => {
          const bytes = good.slice(0, length);
          for (const [at, value] of changes) if (at < length) bytes[at] = value;
          const found = await readBack(bytes);
          expect(found.length).toBeLessThanOrEqual(5000);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('refuse a frame that the format can’t hold', () => {
    expect(() => encodeWav([SOUND], 48_000, [{ frame: -1, label: '' }])).toThrow(/frame must be a whole/);
  });
});
