import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WavReader, encodeWav, readCues } from '../../../src/capture/wav.ts';

const SOUND = new Float32Array(1001).fill(0.25);

const readBack = (bytes: Uint8Array) =>
  readCues((offset, length) => Promise.resolve(bytes.subarray(offset, offset + length)), bytes.length);

/**
 * Reads a WAV's cue points with Python's own struct and nothing of ours, after "Multimedia Programming Interface and
 * Data Specifications 1.0" (IBM and Microsoft, August 1991): RIFF chunks; `cue ` with dwCuePoints and 24 bytes each
 * (dwName, dwPosition, fccChunk, dwChunkStart, dwBlockStart, dwSampleOffset); LIST `adtl` with `labl` (dwName, text).
 */
const INDEPENDENT_READER = `
import json, struct, sys, wave
data = open(sys.argv[1], 'rb').read()
riff, size, form = struct.unpack('<4sI4s', data[:12])
assert riff == b'RIFF' and form == b'WAVE' and size == len(data) - 8, 'RIFF'
def chunks(start, end):
    while start < end:
        tag, length = struct.unpack_from('<4sI', data, start)
        assert start + 8 + length <= end, tag
        yield tag, start + 8, length
        start += 8 + length + (length & 1)
    assert start == end, 'padding'
points, labels = {}, {}
for tag, at, length in chunks(12, len(data)):
    if tag == b'cue ':
        count, = struct.unpack_from('<I', data, at)
        assert length == 4 + 24 * count
        for i in range(count):
            name, position, chunk, cstart, bstart, offset = struct.unpack_from('<II4sIII', data, at + 4 + 24 * i)
            assert chunk == b'data' and cstart == 0 and bstart == 0 and position == offset
            assert name not in points
            points[name] = offset
    if tag == b'LIST' and data[at:at + 4] == b'adtl':
        for sub, sat, slen in chunks(at + 4, at + length):
            assert sub == b'labl'
            name, = struct.unpack_from('<I', data, sat)
            text = data[sat + 4:sat + slen]
            assert text.endswith(b'\\0') and text.count(b'\\0') == 1
            labels[name] = text[:-1].decode('ascii')
with wave.open(sys.argv[1]) as sound:
    frames = sound.getnframes()
print(json.dumps({'frames': frames, 'cues': [{'frame': points[n], 'label': labels[n]} for n in sorted(points)]}))
`;

function hasPython(): boolean {
  try {
    execFileSync('python3', ['--version']);
    return true;
  } catch {
    return false;
  }
}

describe('cue points of a WAV', () => {
  const cues = [
    { frame: 12, label: 'Mark 1, 512 Hz, closed, 15.80 cm' },
    { frame: 700, label: 'Mark 2' },
    { frame: 1001, label: '' },
  ];

  it.skipIf(!hasPython())('are what the specification says, as an independent reader finds them', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'cues-')), 'cues.wav');
    writeFileSync(file, encodeWav([SOUND], 48_000, cues));
    const found: unknown = JSON.parse(
      execFileSync('python3', ['-c', INDEPENDENT_READER, file], { encoding: 'utf8' }),
    );
    expect(found).toEqual({ frames: 1001, cues });
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
