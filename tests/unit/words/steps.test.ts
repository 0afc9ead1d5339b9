import { describe, expect, it } from 'vitest';
import { stepWords } from '../../../src/words/steps.ts';

describe('stepWords', () => {
  it('names steps as people call them', () => {
    expect(stepWords('restore mark')).toBe('bring mark back');
    expect(stepWords('add mark')).toBe('add mark');
  });

  it('leaves a step of another version as it was saved', () => {
    expect(stepWords('bring mark back')).toBe('bring mark back');
    expect(stepWords('constructor')).toBe('constructor');
  });
});
