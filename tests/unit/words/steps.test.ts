import { describe, expect, it } from 'vitest';
import { stepWords } from '../../../src/words/steps.ts';

describe('stepWords', () => {
  it('says what a kept step did, and one that it doesn’t know by its kept name', () => {
    expect(stepWords('put mark back in')).toBe('put mark back in');
    expect(stepWords('turn the tube')).toBe('turn the tube');
    expect(stepWords('toString')).toBe('toString');
  });
});
