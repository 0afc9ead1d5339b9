import { describe, expect, it } from 'vitest';
import { jointScore, OnlineScores } from '../../../../src/resonance/passages/onlineScores.ts';

describe('what the online detector thought', () => {
  it('is known within 150 ms of a peak, the highest of all that was thought', () => {
    const scores = new OnlineScores();
    scores.add(1000, 0.6);
    scores.add(1000, 0.8);
    scores.add(1000, 0.7);
    scores.add(1010, 0.95);
    expect(scores.near(985)).toBe(0.8);
    expect(scores.near(996)).toBe(0.95);
    expect(scores.near(1025)).toBe(0.95);
  });

  it('is one in ten where nothing was thought worth remembering', () => {
    const scores = new OnlineScores();
    scores.add(1000, 0.05);
    expect(scores.near(1000)).toBe(0.1);
    expect(scores.near(2000)).toBe(0.1);
  });
});

describe('two networks’ outputs as one', () => {
  // Logarithmic opinion pool of equal weights: the geometric mean of the odds, 1/4 and 9 give 3/2.
  it.each([
    [0.5, 0.5, 0.5],
    [0.2, 0.9, 0.6],
    [0.9, 0.2, 0.6],
    [0.9, 0.9, 0.9],
    [0.5, 0.1, 0.25],
  ])('%f with time on both sides and %f live are %f', (offline, online, joint) => {
    expect(jointScore(offline, online)).toBeCloseTo(joint, 4);
  });

  it('stay within 0 and 1 where a network is certain', () => {
    expect(jointScore(1, 1)).toBeLessThan(1);
    expect(jointScore(0, 0)).toBeGreaterThan(0);
  });
});
