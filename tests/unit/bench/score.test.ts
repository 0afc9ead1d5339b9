import { describe, expect, it } from 'vitest';
import { flagsAbove, peaksOf } from '../../bench/detector/competitors.ts';
import { addScores, f1, precision, quantile, recall, score } from '../../bench/detector/score.ts';
import type { Passage } from '../../bench/detector/truth.ts';

const passage = (timeS: number, audible = true, halfWidthS = 0.1): Passage => ({
  timeS,
  fromS: timeS - halfWidthS,
  toS: timeS + halfWidthS,
  audible,
  halfWidthS,
  riseDb: 10,
  prominenceDb: 10,
  order: 1,
  lengthM: 0.16,
  aboveNoiseDb: 30,
});
const flag = (timeS: number, flaggedAtS: number | null = null) => ({ timeS, flaggedAtS });

describe('score', () => {
  it('finds each passage once and calls every further flag false', () => {
    const result = score([flag(5.1, 5.5), flag(5.3), flag(9)], [passage(5), passage(12)]);
    expect(result).toMatchObject({ audible: 2, hits: 1, falseAlarms: 2 });
    expect(result.timingErrorsS[0]).toBeCloseTo(0.1, 9);
    expect(result.delaysS[0]).toBeCloseTo(0.5, 9);
  });

  it('allows 0.35 s, or the half-width of a slow passage', () => {
    expect(score([flag(5.34)], [passage(5)]).hits).toBe(1);
    expect(score([flag(5.36)], [passage(5)]).hits).toBe(0);
    expect(score([flag(5.9)], [passage(5, true, 1)]).hits).toBe(1);
  });

  it('neither rewards nor punishes a flag at a passage that nobody could be sure of', () => {
    expect(score([flag(5)], [passage(5, false)])).toMatchObject({ audible: 0, hits: 0, falseAlarms: 0 });
  });

  it('gives two passages that are near one another the flag nearest to each', () => {
    const result = score([flag(5.0), flag(5.3)], [passage(5.05), passage(5.25)]);
    expect(result.hits).toBe(2);
    expect(result.timingErrorsS.map(Math.abs).every((each) => each < 0.051)).toBe(true);
  });

  it('sums up: 3 hits, 1 false alarm, 4 audible give 0.75, 0.75 and 0.75', () => {
    const total = addScores([
      score([flag(1), flag(2)], [passage(1), passage(2)]),
      score([flag(1), flag(4)], [passage(1), passage(8)]),
    ]);
    expect([precision(total), recall(total), f1(total)]).toEqual([0.75, 0.75, 0.75]);
    expect(f1(score([], []))).toBeNull();
    expect(quantile([3, 1, 2], 0.5)).toBe(2);
    expect(quantile([], 0.5)).toBeNull();
  });
});

describe('peaks of a level', () => {
  it('has the prominence over the higher of the two minima', () => {
    // 10 stands over the minima 0 and 4: 6. The 8 lies beyond 4 and above the end 5: 8 - 5 = 3.
    const found = peaksOf({ valuesPerSecond: 10, firstS: 0, levelDb: Float64Array.of(0, 10, 4, 8, 5) });
    expect(found.map((each) => [each.timeS, each.prominenceDb])).toEqual([
      [0.1, 6],
      [0.3, 3],
    ]);
    expect(flagsAbove(found, 6)).toEqual([{ timeS: 0.1, flaggedAtS: 0.2 }]);
  });
});
