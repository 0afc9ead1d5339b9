import { describe, expect, it } from 'vitest';
import { RecordingSource } from '../../../src/capture/recordingSource.ts';
import { encodeWav } from '../../../src/capture/wav.ts';
import { listeningWarningWords } from '../../../src/words/listening.ts';
import { HeardSound } from './heardSound.ts';
import { wavBytes } from './wavBytes.ts';

const tone = Float32Array.from({ length: 500_000 }, (_, i) => 0.1 * Math.sin(i * 0.067));

describe('RecordingSource', () => {
  it('delivers a WAV in order at its own rate and ends', async () => {
    const progress: number[] = [];
    const source = new RecordingSource(new Blob([encodeWav([tone], 44_100)]), {
      onProgress: (share) => progress.push(share),
    });
    const heard = new HeardSound();
    await source.start(heard);
    expect(heard.states).toEqual([
      { kind: 'starting' },
      { kind: 'running', sampleRateHz: 44_100, settings: null },
      { kind: 'ended' },
    ]);
    expect(heard.frames).toBe(500_000);
    expect(heard.isSeamless).toBe(true);
    expect(source.durationS).toBeCloseTo(11.338, 3);
    expect(source.remarks).toEqual([]);
    expect(progress.at(-1)).toBe(1);
    expect([...progress].sort((a, b) => a - b)).toEqual(progress);
  });

  it('lets the page breathe while it works', async () => {
    const heard = new HeardSound();
    // A listener that takes 5 ms a block.
    heard.onEveryBlock = () => {
      const end = performance.now() + 5;
      while (performance.now() < end);
    };
    let looks = 0;
    const timer = setInterval(() => (looks += 1), 1);
    await new RecordingSource(new Blob([encodeWav([tone], 48_000)])).start(heard);
    clearInterval(timer);
    // 123 blocks of 5 ms with a rest after every 12 ms: some 40 rests; a loaded machine may miss most timers.
    expect(looks).toBeGreaterThan(10);
  });

  it('stops in the middle and says nothing afterwards', async () => {
    const source = new RecordingSource(new Blob([encodeWav([tone], 48_000)]));
    const heard = new HeardSound();
    heard.onEveryBlock = () => {
      if (heard.blocks.length === 3) source.stop();
    };
    await source.start(heard);
    expect(heard.blocks.length).toBe(3);
    expect(heard.kinds).toEqual(['starting', 'running', 'idle']);
  });

  it('can be delivered again', async () => {
    const source = new RecordingSource(new Blob([encodeWav([tone], 48_000)]));
    const heard = new HeardSound();
    await source.start(heard);
    const again = new HeardSound();
    await source.start(again);
    expect(again.frames).toBe(heard.frames);
  });

  it('says which channel it took and that the end is missing', async () => {
    const bytes = encodeWav([new Float32Array(40_000), tone.slice(0, 40_000)], 48_000);
    const source = new RecordingSource(new Blob([bytes.slice(0, 120_000)]));
    const heard = new HeardSound();
    await source.start(heard);
    const said = source.remarks.map((remark) => listeningWarningWords({ ...remark, timeS: null }));
    expect(said.join(' ')).toMatch(/cut off.*channel 1 is silent/);
    expect(heard.kinds.at(-1)).toBe('ended');
  });

  it.each([
    ['an empty file', new Uint8Array(0), 'empty-recording'],
    ['a WAV without sound', wavBytes({ data: [] }), 'empty-recording'],
    ['a µ-law WAV where nothing decodes it', wavBytes({ tag: 7, bits: 8, data: [1, 2] }), 'not-audio'],
    ['text', new TextEncoder().encode('fork_hz,length_cm'), 'not-audio'],
  ])('names %s', async (_, bytes, code) => {
    const heard = new HeardSound();
    await new RecordingSource(new Blob([bytes as Uint8Array<ArrayBuffer>])).start(heard);
    expect(heard.states.at(-1)).toMatchObject({ kind: 'failed', failure: { code } });
  });

  it('names a file that vanished', async () => {
    const file = new Blob([encodeWav([tone], 48_000)]);
    file.slice = () => {
      throw new DOMException('gone', 'NotReadableError');
    };
    const heard = new HeardSound();
    await new RecordingSource(file).start(heard);
    expect(heard.states.at(-1)).toMatchObject({ kind: 'failed', failure: { code: 'not-audio' } });
  });

  it('turns a fault of the listener into a named state', async () => {
    const heard = new HeardSound();
    heard.onEveryBlock = () => {
      throw new Error('out of paper');
    };
    await new RecordingSource(new Blob([encodeWav([tone], 48_000)])).start(heard);
    expect(heard.states.at(-1)).toMatchObject({ kind: 'failed', failure: { code: 'capture-broken' } });
  });
});
