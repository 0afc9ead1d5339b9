import { describe, expect, it } from 'vitest';
import { readingWords } from '../../../src/words/practiceTruth.ts';

const resonance = { lengthM: 0.823, halfWidthM: 0.0041, loudestM: 0.8243 };

describe('readingWords', () => {
  it('says what was typed, the resonance, the loudest place and how well it was read', () => {
    expect(readingWords({ key: 'a', lengthM: 0.8241, resonance, verdict: 'loudest' }, () => 'Mark 3')).toBe(
      'Mark 3: you typed 82.41 cm. The column resonates at 82.30 cm and is loudest at 82.43 cm, 1.3 mm longer. Read well, at the loudest place.',
    );
  });

  it('says how far a reading beside both is off', () => {
    expect(
      readingWords({ key: 'a', lengthM: 0.82, resonance, verdict: 'too-short' }, () => 'Mark 3'),
    ).toContain('3.0 mm too short for the resonance.');
  });
});
