import { describe, expect, it } from 'vitest';
import type { SampleBlock, SoundListener, SoundSource } from '../../../src/capture/soundSource.ts';
import { newFork } from '../../../src/notebook/newExperiment.ts';
import { Listening } from '../../../src/session/hearing/listening.ts';
import { slideRecording } from '../../support/slideRecording.ts';
import { benchInTest, told } from './benchInTest.ts';

const BLOCK_FRAMES = 2048;
// Two soundings of a 512 Hz fork, each past one resonance.
const slide = slideRecording({ forkHz: 512, closed: true, seed: 3, talkDb: -24 });
const { samples, sampleRateHz } = slide;
const [first, second] = slide.passages;
if (first === undefined || second === undefined) throw new Error('this recording has two passages');

/** Plays the recording as the test says, as any kind of source. */
class SlideSource implements SoundSource {
  starts = 0;
  private listener: SoundListener | null = null;
  private frame = 0;

  constructor(readonly kind: SoundSource['kind']) {}

  start(listener: SoundListener): Promise<void> {
    this.starts += 1;
    this.frame = 0;
    this.listener = listener;
    listener.onState({ kind: 'running', sampleRateHz, settings: null });
    return Promise.resolve();
  }

  stop(): void {
    this.listener = null;
  }

  playUntil(timeS: number): void {
    while (this.frame + BLOCK_FRAMES <= Math.min(timeS * sampleRateHz, samples.length)) {
      const block: SampleBlock = {
        samples: samples.subarray(this.frame, this.frame + BLOCK_FRAMES),
        startFrame: this.frame,
        discontinuity: false,
      };
      this.frame += BLOCK_FRAMES;
      this.listener?.onBlock(block);
    }
  }

  end(): void {
    this.playUntil(Infinity);
    this.listener?.onState({ kind: 'ended' });
  }
}

/** A session that listens to the slide with the first of two forks, 512 and 384 Hz. */
async function listening(kind: SoundSource['kind'], forkId = 'fork-1') {
  const bench = benchInTest({ createListening: (options) => new Listening(options) });
  bench.change('add fork', (experiment) => ({
    ...experiment,
    forks: [...experiment.forks, newFork('fork-2', 384)],
  }));
  bench.setPresent({ forkId });
  const source = new SlideSource(kind);
  await bench.hearing.start(source);
  return { bench, source };
}

describe('a change of fork while listening', () => {
  it('keeps the resonance that has just passed, with the fork that sounded and its own trace', async () => {
    for (const afterS of [0.1, 0.3, 0.6]) {
      const { bench, source } = await listening('microphone');
      source.playUntil(first.timeS + afterS);
      const before = bench.experiment.marks.length;
      bench.setPresent({ forkId: 'fork-2' });
      source.playUntil(first.timeS + 6);
      const [mark, ...others] = bench.experiment.marks;
      expect(others).toEqual([]);
      expect(mark).toMatchObject({ forkId: 'fork-1', lengthM: null });
      expect(Math.abs((mark?.evidence?.timeS ?? 0) - first.timeS)).toBeLessThan(0.3);
      const trace = mark?.evidence?.trace;
      const traceEndS = (trace?.startS ?? 0) + (trace?.stepS ?? 0) * ((trace?.toneDb.length ?? 1) - 1);
      expect(traceEndS).toBeLessThan(first.timeS + afterS + 0.1);
      if (afterS === 0.1) expect(before).toBe(0);
    }
  });

  it('hears the new fork from a second before its resonance on', async () => {
    const { bench, source } = await listening('microphone', 'fork-2');
    source.playUntil(first.timeS - 1);
    expect(bench.experiment.marks).toEqual([]);
    bench.setPresent({ forkId: 'fork-1' });
    source.playUntil(first.timeS + 3);
    expect(bench.experiment.marks).toMatchObject([{ forkId: 'fork-1' }]);
  });

  it('goes on counting soundings, and lets none stay open', async () => {
    const { bench, source } = await listening('microphone');
    source.playUntil(first.timeS + 0.6);
    const during = bench.hearing.trace.presentSounding;
    expect(during).not.toBeNull();
    bench.setPresent({ forkId: 'fork-2' });
    expect(bench.hearing.trace.presentSounding).toBeNull();
    bench.setPresent({ forkId: 'fork-1' });
    source.playUntil(second.timeS + 3);
    const indexes = bench.hearing.trace.soundings.map(({ index }) => index);
    expect(indexes.length).toBeGreaterThan(1);
    expect(new Set(indexes).size).toBe(indexes.length);
    expect(bench.hearing.trace.soundings[0]?.startS).toBe(during?.startS);
    expect(bench.experiment.marks.map(({ forkId }) => forkId)).toEqual(['fork-1', 'fork-1']);
  });

  it('has a recording heard again from its beginning, so that all of it counts', async () => {
    const { bench, source } = await listening('recording', 'fork-2');
    source.playUntil(second.timeS - 2);
    bench.setPresent({ forkId: 'fork-1' });
    expect(source.starts).toBe(2);
    expect(told(bench)).toMatch(/being analysed again, from its beginning/);
    source.end();
    const timesS = bench.experiment.marks.map(({ evidence }) => evidence?.timeS ?? 0);
    expect(timesS).toHaveLength(2);
    expect(Math.abs((timesS[0] ?? 0) - first.timeS)).toBeLessThan(0.3);
    expect(Math.abs((timesS[1] ?? 0) - second.timeS)).toBeLessThan(0.3);
  });
});
