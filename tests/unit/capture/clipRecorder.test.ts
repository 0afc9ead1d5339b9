import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLIP_MARGIN_S, ClipRecorder, LONGEST_CLIP_S } from '../../../src/capture/clipRecorder.ts';
import type { ClipPiece } from '../../../src/capture/clipRecorder.ts';

const RATE_HZ = 1000;

/** Sample n of a run carries the number n, so that each piece tells where it is from. */
function block(startFrame: number, frames: number) {
  const samples = Float32Array.from({ length: frames }, (_, i) => ((startFrame + i) % 30_000) / 32_768);
  return { samples, startFrame, discontinuity: false };
}

/** Puts the pieces of one sounding together and checks that none is missing or doubled. */
function clipOf(pieces: readonly ClipPiece[], index: number): { startS: number; samples: number[] } {
  const own = pieces.filter((piece) => piece.soundingIndex === index);
  const samples: number[] = [];
  for (const piece of own) {
    expect(piece.clipFrame).toBe(samples.length);
    samples.push(...piece.samples);
  }
  return { startS: own[0]?.clipStartS ?? Number.NaN, samples };
}

describe('ClipRecorder', () => {
  it('keeps each sounding with a second before and after it, bit for bit, however the sound is cut', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 700 }), { minLength: 40, maxLength: 80 }), (sizes) => {
        const recorder = new ClipRecorder(RATE_HZ);
        const pieces: ClipPiece[] = [];
        let frame = 0;
        let told = 0;
        for (const size of sizes) {
          pieces.push(...recorder.push(block(frame, size)));
          frame += size;
          // Told 1.5 s late that it began at 3 s, later that it ended at 6 s.
          if (told === 0 && frame > 4500) pieces.push(...recorder.sounding((told = 1), 3, null));
          if (told === 1 && frame > 7000) pieces.push(...recorder.sounding(1, 3, 6));
        }
        pieces.push(...recorder.finish());
        if (frame < 8700) return;
        const clip = clipOf(pieces, 1);
        expect(clip.startS).toBe(3 - CLIP_MARGIN_S);
        const toFrame = (6 + CLIP_MARGIN_S) * RATE_HZ;
        expect(clip.samples.length).toBeGreaterThanOrEqual(toFrame - 2000);
        expect(clip.samples.every((sample, i) => sample === 2000 + i)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  it('ends exactly a second after the end when it is told in time', () => {
    const recorder = new ClipRecorder(RATE_HZ);
    const pieces = [...recorder.push(block(0, 5000)), ...recorder.sounding(1, 3, null)];
    pieces.push(...recorder.push(block(5000, 1000)), ...recorder.sounding(1, 3, 5.8));
    pieces.push(...recorder.push(block(6000, 4000)), ...recorder.finish());
    const { samples } = clipOf(pieces, 1);
    expect(samples.at(0)).toBe(2000);
    expect(samples.at(-1)).toBe(6799);
  });

  it('two soundings share no sound, and lost frames are silence', () => {
    const recorder = new ClipRecorder(RATE_HZ);
    const pieces = [...recorder.push(block(0, 3000)), ...recorder.sounding(1, 2, null)];
    pieces.push(...recorder.push(block(3000, 1000)), ...recorder.sounding(1, 2, 3.5));
    pieces.push(...recorder.push({ ...block(4500, 500), discontinuity: true }));
    pieces.push(
      ...recorder.sounding(2, 4.8, null),
      ...recorder.push(block(5000, 1000)),
      ...recorder.finish(),
    );
    const first = clipOf(pieces, 1);
    const second = clipOf(pieces, 2);
    expect(first.samples.slice(3000, 3500)).toEqual(Array.from({ length: 500 }, () => 0));
    expect(second.startS * RATE_HZ).toBeGreaterThanOrEqual(first.startS * RATE_HZ + first.samples.length);
    expect(second.samples.at(-1)).toBe(5999);
  });

  it('is bounded: nothing beyond two minutes of one sounding, nothing at all without one', () => {
    const recorder = new ClipRecorder(RATE_HZ);
    expect(recorder.push(block(0, 3000))).toEqual([]);
    const pieces = [...recorder.sounding(1, 2, null)];
    for (let frame = 3000; frame < 140_000; frame += 500) pieces.push(...recorder.push(block(frame, 500)));
    const samples = pieces.reduce((sum, piece) => sum + piece.samples.length, 0);
    expect(samples).toBe(LONGEST_CLIP_S * RATE_HZ);
  });
});
