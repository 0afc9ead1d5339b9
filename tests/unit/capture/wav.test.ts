import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { encodeWav, parseWavHeader, WavError, WavReader } from '../../../src/capture/wav.ts';
import { inFull } from '../../../src/words/faultWords.ts';
import { recordingFaultWords } from '../../../src/words/recordingFaults.ts';
import { le, wavBytes } from './wavBytes.ts';
import type { WavParts } from './wavBytes.ts';

async function samplesOf(bytes: Uint8Array): Promise<number[][]> {
  const reader = await WavReader.fromBytes(bytes);
  const channels = await reader.readChannels(0, reader.format.frameCount);
  return channels.map((channel) => [...channel]);
}

function float32(value: number): number[] {
  return [...new Uint8Array(new Float32Array([value]).buffer)];
}

function float64(value: number): number[] {
  return [...new Uint8Array(new Float64Array([value]).buffer)];
}

describe('WavReader reads every usual coding', () => {
  // Two's complement, little-endian, full scale 2^(bits-1); 8 bits are unsigned about 128 (Microsoft 1991).
  const half: readonly [string, WavParts][] = [
    ['8-bit PCM', { bits: 8, data: [192, 64, 0] }],
    ['16-bit PCM', { bits: 16, data: [0x00, 0x40, 0x00, 0xc0, 0x00, 0x80] }],
    ['24-bit PCM', { bits: 24, data: [0, 0, 0x40, 0, 0, 0xc0, 0, 0, 0x80] }],
    ['32-bit PCM', { bits: 32, data: [0, 0, 0, 0x40, 0, 0, 0, 0xc0, 0, 0, 0, 0x80] }],
    ['32-bit float', { tag: 3, bits: 32, data: [0.5, -0.5, -1].flatMap(float32) }],
    ['64-bit float', { tag: 3, bits: 64, data: [0.5, -0.5, -1].flatMap(float64) }],
    ['extensible 16-bit PCM', { tag: 0xfffe, subFormat: 1, bits: 16, data: [0, 0x40, 0, 0xc0, 0, 0x80] }],
    [
      'extensible 32-bit float',
      { tag: 0xfffe, subFormat: 3, bits: 32, data: [0.5, -0.5, -1].flatMap(float32) },
    ],
    ['20 valid bits in 3 bytes', { bits: 20, bytesPerFrame: 3, data: [0, 0, 0x40, 0, 0, 0xc0, 0, 0, 0x80] }],
  ];
  it.each(half)('%s', async (_, parts) => {
    expect(await samplesOf(wavBytes(parts))).toEqual([[0.5, -0.5, -1]]);
  });

  it('keeps channels apart', async () => {
    const data = [0, 0x40, 0, 0xc0, 0, 0x20, 0, 0xe0];
    expect(await samplesOf(wavBytes({ channelCount: 2, data }))).toEqual([
      [0.5, 0.25],
      [-0.5, -0.25],
    ]);
  });

  it('turns floats that are no numbers into silence', async () => {
    const data = [NaN, Infinity, 0.25].flatMap(float32);
    expect(await samplesOf(wavBytes({ tag: 3, bits: 32, data }))).toEqual([[0, 0, 0.25]]);
  });
});

describe('WavReader copes with the files that recorders really write', () => {
  const data = [0, 0x40, 0, 0xc0];
  it.each<[string, Partial<WavParts>]>([
    ['a list of odd length before the sound', { before: [['LIST', [1, 2, 3]]] }],
    ['bytes after the sound', { after: [1, 2, 3, 4, 5] }],
    ['a length that was never filled in (0)', { declaredLength: 0 }],
    ['a length of a streaming writer (all ones)', { declaredLength: 0xffffffff }],
    [
      'the long form of broadcasters',
      {
        form: 'RF64',
        declaredLength: 0xffffffff,
        before: [['ds64', [...le(80, 8), ...le(4, 8), ...le(2, 8), ...le(0, 4)]]],
      },
    ],
  ])('%s', async (_, parts) => {
    expect((await samplesOf(wavBytes({ ...parts, data })))[0]?.slice(0, 2)).toEqual([0.5, -0.5]);
  });

  it.each([
    ['without its byte of padding', []],
    ['padded with 0, as it should be', [0]],
    ['padded with a letter', [0x20]],
  ])('a list of odd length, %s', async (_, padding) => {
    const [letters, list] = [(text: string) => [...text].map((c) => c.charCodeAt(0)), [1, 2, 3, ...padding]];
    const whole = [...wavBytes({ data })];
    const [head, fmt, sound] = [whole.slice(0, 12), whole.slice(12, 36), whole.slice(36)];
    const bytes = Uint8Array.from([...head, ...fmt, ...letters('LIST'), ...le(3, 4), ...list, ...sound]);
    expect((await samplesOf(bytes))[0]).toEqual((await samplesOf(wavBytes({ data })))[0]);
  });

  it('takes what is there of a file that was cut off, and says so', () => {
    const format = parseWavHeader(wavBytes({ data: [...data, 0x01], declaredLength: 4000 }));
    expect(format).toMatchObject({ frameCount: 2, truncated: true });
  });
});

describe('WavReader names what is wrong', () => {
  it.each<[string, Uint8Array, string, RegExp]>([
    ['an empty file', new Uint8Array(0), 'empty-recording', /0 bytes/],
    [
      'another kind of file',
      new TextEncoder().encode('fork_hz,length_cm\n512,15.8\n'),
      'not-audio',
      /not a WAV/,
    ],
    ['a few bytes', Uint8Array.of(82, 73, 70), 'not-audio', /not a WAV/],
    ['no sound', wavBytes({ data: [] }), 'empty-recording', /holds no sound/],
    ['less than one frame', wavBytes({ data: [1] }), 'empty-recording', /holds no sound/],
    ['a header cut off', wavBytes({ data: [0, 0] }).subarray(0, 30), 'not-audio', /cut off/],
    ['an end before the sound', wavBytes({ data: [0, 0] }).subarray(0, 36), 'empty-recording', /ends before/],
    ['µ-law', wavBytes({ tag: 7, bits: 8, data: [0] }), 'not-audio', /µ-law/],
    ['an unknown coding', wavBytes({ tag: 0x1234, data: [0, 0] }), 'not-audio', /number 4660/],
    ['no channel', wavBytes({ channelCount: 0, bytesPerFrame: 2, data: [0, 0] }), 'not-audio', /0 channels/],
    ['an absurd rate', wavBytes({ sampleRateHz: 7, data: [0, 0] }), 'not-audio', /7 Hz/],
    ['5 bytes a sample', wavBytes({ bits: 40, data: [0, 0, 0, 0, 0] }), 'not-audio', /40 bits/],
    ['the big-endian form', wavBytes({ form: 'RIFX', data: [0, 0] }), 'not-audio', /big-endian/],
  ])('%s', (_, bytes, code, message) => {
    const fault = catchFault(() => parseWavHeader(bytes));
    expect(fault).toBeInstanceOf(WavError);
    expect(fault).toMatchObject({ code });
    expect(inFull(recordingFaultWords((fault as WavError).fault))).toMatch(message);
  });

  it('never answers damaged bytes with anything but a format or a WavError', () => {
    const sound = wavBytes({
      channelCount: 2,
      before: [['LIST', [1, 2, 3]]],
      data: new Array<number>(64).fill(7),
    });
    const damage = fc.array(fc.tuple(fc.nat(sound.length - 1), fc.nat(255)), { maxLength: 12 });
    fc.assert(
      fc.property(damage, fc.nat(sound.length), (changes, length) => {
        const bytes = sound.slice(0, length);
        for (const [at, value] of changes) if (at < length) bytes[at] = value;
        const fault = catchFault(() => {
          const format = parseWavHeader(bytes);
          expect(format.frameCount).toBeGreaterThan(0);
          expect(format.dataOffset + format.frameCount * format.bytesPerFrame).toBeLessThanOrEqual(length);
        });
        if (fault !== null) expect(fault).toBeInstanceOf(WavError);
      }),
      { numRuns: 2000, seed: 7 },
    );
  });
});

describe('encodeWav', () => {
  it('writes what WavReader reads, to half a step of 16 bits', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 1, maxLength: 50 }),
        fc.integer({ min: 1, max: 4 }),
        async (values, channelCount) => {
          const channels = Array.from({ length: channelCount }, (_, i) =>
            Float32Array.from(values, (v) => v / (i + 1)),
          );
          const back = await samplesOf(encodeWav(channels, 44_100));
          expect(back.length).toBe(channelCount);
          back.forEach((samples, i) => {
            samples.forEach((sample, k) => {
              // The largest integer stands for one step below 1.
              const wanted = Math.min(channels[i]?.[k] ?? NaN, 32_767 / 32_768);
              expect(Math.abs(sample - wanted)).toBeLessThanOrEqual(0.5 / 32_768);
            });
          });
        },
      ),
      { numRuns: 100, seed: 3 },
    );
  });

  it('writes the 44-byte header of the format', () => {
    // Byte by byte after Microsoft 1991: RIFF, 38 bytes follow, WAVE, fmt, 16, PCM, 1 channel, 8000 Hz, 16000 B/s, 2, 16, data, 2.
    const wanted = wavBytes({ sampleRateHz: 8000, data: [0x00, 0x40] });
    expect(encodeWav([Float32Array.of(0.5)], 8000)).toEqual(wanted);
  });

  it.each([
    ['no channel', [], 48_000],
    ['channels of two lengths', [new Float32Array(1), new Float32Array(2)], 48_000],
    ['a rate of 0', [new Float32Array(1)], 0],
  ])('refuses %s', (_, channels, rateHz) => {
    expect(() => encodeWav(channels, rateHz)).toThrow(RangeError);
  });
});

describe('WavReader.blocks', () => {
  it('delivers every frame once, in order, with its place, whatever the length', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 150_000 }),
        fc.integer({ min: 1024, max: 65_536 }),
        fc.boolean(),
        async (frames, blockFrames, isKept) => {
          const samples = Float32Array.from({ length: frames }, (_, i) => ((i % 65_521) - 32_760) / 32_768);
          const reader = await WavReader.fromBytes(encodeWav([samples], 48_000));
          let next = 0;
          for await (const block of reader.blocks(blockFrames, isKept)) {
            expect(block.startFrame).toBe(next);
            expect(block.discontinuity).toBe(false);
            const wrong = block.samples.findIndex((sample, i) => sample !== samples[next + i]);
            expect(wrong).toBe(-1);
            next += block.samples.length;
          }
          expect(next).toBe(frames);
        },
      ),
      { numRuns: 15, seed: 5 },
    );
  });

  it('never holds more than a second or so of an hour in memory', async () => {
    const frames = 3600 * 48_000;
    const header = encodeWav([new Float32Array(1)], 48_000).slice(0, 44);
    new DataView(header.buffer).setUint32(40, frames * 2, true);
    let largest = 0;
    const reader = await WavReader.open(
      (offset, length) => {
        largest = Math.max(largest, length);
        return Promise.resolve(
          offset < 44 ? header.subarray(offset, offset + length) : new Uint8Array(length),
        );
      },
      44 + frames * 2,
    );
    let delivered = 0;
    for await (const block of reader.blocks()) {
      delivered += block.samples.length;
      if (delivered > 60 * 48_000) break;
    }
    expect(reader.durationS).toBe(3600);
    expect(largest).toBeLessThan(2 * 1024 * 1024);
  });

  it('uses the channel that carries the sound', async () => {
    const live = Float32Array.from({ length: 48_000 }, (_, i) => 0.1 * Math.sin(i / 10));
    const reader = await WavReader.fromBytes(encodeWav([new Float32Array(48_000), live], 48_000));
    expect(await reader.chooseChannel()).toMatchObject({ channel: 1 });
    for await (const block of reader.blocks()) {
      expect(block.samples[5]).toBeCloseTo(live[block.startFrame + 5] ?? NaN, 4);
    }
  });

  it('says so when the file shrinks while it is read', async () => {
    const bytes = encodeWav([new Float32Array(100_000)], 48_000);
    let gone = false;
    const reader = await WavReader.open(
      (offset, length) => Promise.resolve(gone ? new Uint8Array(0) : bytes.subarray(offset, offset + length)),
      bytes.length,
    );
    gone = true;
    await expect(reader.readChannels(0, 10)).rejects.toMatchObject({
      fault: { code: 'not-audio', fault: 'shorter' },
    });
  });
});

function catchFault(act: () => void): unknown {
  try {
    act();
    return null;
  } catch (error) {
    return error;
  }
}
