import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BatchJoiner } from '../../../src/capture/batchJoiner.ts';
import { BatchFiller } from '../../../src/capture/worklet/batchFiller.ts';
import { BATCH_FRAMES } from '../../../src/capture/worklet/captureMessages.ts';
import type { CaptureBatch } from '../../../src/capture/worklet/captureMessages.ts';

function ramp(start: number, length: number): Float32Array<ArrayBuffer> {
  return Float32Array.from({ length }, (_, i) => start + i);
}

function batch(startFrame: number, frames = BATCH_FRAMES, channelCount = 1): CaptureBatch {
  return {
    kind: 'batch',
    startFrame,
    frames,
    channels: Array.from({ length: channelCount }, () => ramp(startFrame, BATCH_FRAMES)),
  };
}

describe('BatchFiller', () => {
  it('hands on every frame once with its place, however the pieces and gaps fall', () => {
    const pieces = fc.array(fc.tuple(fc.integer({ min: 0, max: 900 }), fc.nat(3)), { maxLength: 60 });
    fc.assert(
      fc.property(pieces, (list) => {
        const sent: number[] = [];
        const got: number[] = [];
        const filler = new BatchFiller(512, 2, (one) => {
          if (one.frames < 1 || one.frames > 512) throw new Error(`a batch of ${one.frames} frames`);
          const samples = one.channels[0]?.subarray(0, one.frames) ?? new Float32Array(0);
          if (samples[0] !== one.startFrame) throw new Error(`${samples[0]} came at ${one.startFrame}`);
          got.push(...samples);
          filler.recycle(one.channels);
        });
        let frame = 1000;
        for (const [length, lost] of list) {
          frame += lost === 3 ? 128 : 0;
          const piece = ramp(frame, length);
          filler.push(length === 0 ? [] : [piece], frame);
          sent.push(...piece);
          frame += length;
        }
        filler.push([], frame);
        expect(got.length).toBe(sent.length);
        expect(got.findIndex((value, i) => value !== sent[i])).toBe(-1);
      }),
      { numRuns: 100, seed: 2 },
    );
  });

  it('fills buffers that came back instead of making new ones', () => {
    const seen = new Set<Float32Array>();
    const filler = new BatchFiller(256, 2, (one) => {
      one.channels.forEach((channel) => seen.add(channel));
      filler.recycle(one.channels);
    });
    for (let frame = 0; frame < 128 * 400; frame += 128) filler.push([ramp(0, 128), ramp(0, 128)], frame);
    // Two channels, and the next batch begins only when the one before has come back.
    expect(seen.size).toBe(2);
  });

  it('ends a batch when the number of channels changes', () => {
    const counts: [number, number][] = [];
    const filler = new BatchFiller(512, 2, (one) => counts.push([one.channels.length, one.frames]));
    filler.push([ramp(0, 128), ramp(0, 128), ramp(0, 128)], 0);
    filler.push([ramp(128, 128)], 128);
    filler.push([], 256);
    expect(counts).toEqual([
      [2, 128],
      [1, 128],
    ]);
  });
});

describe('BatchJoiner', () => {
  it('begins at 0 with the first whole batch', () => {
    const joiner = new BatchJoiner(48_000);
    expect(joiner.add(batch(640, 128))).toEqual([]);
    expect(joiner.add(batch(4096))).toMatchObject([{ startFrame: 0, discontinuity: false }]);
    expect(joiner.add(batch(4096 + BATCH_FRAMES))).toMatchObject([
      { startFrame: BATCH_FRAMES, discontinuity: false },
    ]);
  });

  it('counts lost frames and marks the gap once', () => {
    const joiner = new BatchJoiner(48_000);
    joiner.add(batch(0));
    expect(joiner.add(batch(BATCH_FRAMES + 441))).toMatchObject([
      { startFrame: BATCH_FRAMES + 441, discontinuity: true },
    ]);
    expect(joiner.add(batch(2 * BATCH_FRAMES + 441))).toMatchObject([{ discontinuity: false }]);
  });

  it('adds the time of an interruption that the audio system did not count', () => {
    const joiner = new BatchJoiner(48_000);
    joiner.add(batch(0));
    joiner.interrupt(2);
    expect(joiner.add(batch(BATCH_FRAMES))).toMatchObject([
      { startFrame: BATCH_FRAMES + 96_000, discontinuity: true },
    ]);
  });

  it('holds two channels back for half a second, then delivers all of one', () => {
    const joiner = new BatchJoiner(48_000);
    const blocks = Array.from({ length: 20 }, (_, i) => {
      const pair = batch(i * BATCH_FRAMES, BATCH_FRAMES, 2);
      pair.channels[0]?.fill(0);
      return joiner.add(pair);
    });
    // 12 batches of 2048 are the first to hold half a second.
    expect(blocks.map((list) => list.length)).toEqual([
      ...Array<number>(11).fill(0),
      12,
      ...Array<number>(8).fill(1),
    ]);
    expect(joiner.channelChoice?.channel).toBe(1);
    const all = blocks.flat();
    expect(all.map((block) => block.startFrame)).toEqual(all.map((_, i) => i * BATCH_FRAMES));
    expect(all.every((block) => block.samples[3] === block.startFrame + 3)).toBe(true);
  });

  it('copies, because the buffers go back to be filled again', () => {
    const joiner = new BatchJoiner(48_000);
    const one = batch(0);
    const [block] = joiner.add(one);
    one.channels[0]?.fill(-1);
    expect(block?.samples[7]).toBe(7);
  });
});
