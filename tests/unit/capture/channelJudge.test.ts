import { describe, expect, it } from 'vitest';
import { ChannelJudge } from '../../../src/capture/channelJudge.ts';
import { channelWords } from '../../../src/words/soundChannel.ts';
import { SeededRandom } from '../../../src/capture/practice/seededRandom.ts';

const FRAMES = 48_000;
const random = new SeededRandom(11);

/** Bursts of tone over faint noise, as talk or a fork at a microphone. */
function lively(noise: number, gain = 1): Float32Array {
  return Float32Array.from({ length: FRAMES }, (_, i) => {
    const on = Math.floor(i / 9600) % 2 === 0 ? 0.1 : 0.002;
    return Math.max(-1, Math.min(1, gain * on * Math.sin(i * 0.067) + noise * random.normal()));
  });
}

function choose(...channels: Float32Array[]) {
  const judge = new ChannelJudge(channels.length);
  judge.add(channels);
  return judge.choose();
}

function said(...channels: readonly Float32Array[]): string {
  const { reason } = choose(...channels);
  return reason === null ? '' : channelWords(reason);
}

describe('ChannelJudge', () => {
  it('has nothing to choose from one channel', () => {
    expect(choose(lively(0.001))).toEqual({ channel: 0, reason: null });
  });

  it('keeps the first of two that are alike', () => {
    expect(choose(lively(0.001), lively(0.001)).channel).toBe(0);
  });

  it('leaves a dead channel, also one with a constant offset', () => {
    expect(choose(new Float32Array(FRAMES), lively(0.001)).channel).toBe(1);
    expect(choose(new Float32Array(FRAMES).fill(0.3), lively(0.001))).toEqual({
      channel: 1,
      reason: { channel: 1, channelCount: 2, faults: [{ channel: 0, fault: 'silent' }], isLessNoisy: true },
    });
    expect(said(new Float32Array(FRAMES), lively(0.001))).toBe(
      'Channel 2 of 2 is used: channel 1 is silent.',
    );
  });

  it('leaves a noisy channel', () => {
    expect(choose(lively(0.03), lively(0.001)).channel).toBe(1);
  });

  it('leaves a clipped channel, even when the other is faint', () => {
    expect(said(lively(0.001, 15), lively(0.001, 0.3))).toMatch(/channel 1 clips/);
  });

  it('answers without any sound', () => {
    expect(new ChannelJudge(2).choose()).toEqual({ channel: 0, reason: null });
  });
});
