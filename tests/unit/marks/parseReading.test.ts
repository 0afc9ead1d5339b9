import { describe, expect, it } from 'vitest';
import { parseReading } from '../../../src/marks/parseReading.ts';
import { parseFaultWords } from '../../../src/words/parseFaults.ts';

describe('parseReading', () => {
  it.each([
    ['15.8', 0.158, null],
    ['158 mm', 0.158, null],
    ['15.2–16.4', 0.152, 0.164],
    ['15,2 - 16,4', 0.152, 0.164],
    ['15.2-16.4 cm', 0.152, 0.164],
    ['152..164 mm', 0.152, 0.164],
    ['152 mm to 16.4 cm', 0.152, 0.164],
    ['16.4 − 15.2', 0.152, 0.164],
    ['15.8–15.8', 0.158, null],
    ['1.58e1', 0.158, null],
  ])('reads “%s”', (text, lengthM, otherLengthM) => {
    const read = parseReading(text);
    expect(read).toMatchObject({ ok: true });
    if (!read.ok) return;
    expect(read.lengthM).toBeCloseTo(lengthM, 12);
    if (otherLengthM === null) expect(read.otherLengthM).toBeNull();
    else expect(read.otherLengthM).toBeCloseTo(otherLengthM, 12);
  });

  it.each([
    ['-3', /negative/],
    ['abc', /not a number/],
    ['15.2–abc', /not a number/],
    ['15.2–0', /zero/],
    ['15.2–49', /15 cm apart.*two marks/],
    ['', /empty/],
  ])('says what is wrong with “%s”', (text, words) => {
    const read = parseReading(text);
    expect(read.ok ? '' : parseFaultWords(read.fault)).toMatch(words);
  });
});
