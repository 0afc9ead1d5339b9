import { describe, expect, it } from 'vitest';
import { beyondTubeWords, readingWords } from '../../../src/words/readings.ts';

describe('a reading of the rule', () => {
  it.each([
    [0.16, null, '16.0'],
    [0.158, null, '15.8'],
    [0.15825, null, '15.825'],
    [0.152, 0.16, '15.2–16.0'],
    [-0.04, null, '−4.0'],
  ])('of %f m and %j m is written to the millimetre at least: %s', (lengthM, otherLengthM, said) => {
    expect(readingWords(lengthM, otherLengthM)).toBe(said);
  });

  it('that is longer than the tube names both lengths in cm', () => {
    expect(beyondTubeWords(1.2, 1)).toMatch(/^120 cm is longer than the tube \(100 cm\)\./);
  });
});
