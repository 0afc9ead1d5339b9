import { describe, expect, it } from 'vitest';
import { fixed, hertz, roundPair, signed, significant, stampedHertz } from '../../../src/words/numbers.ts';
import { counted, ordinal, plural } from '../../../src/words/en/grammar.ts';
import { listed } from '../../../src/words/lists.ts';

describe('roundPair', () => {
  it('rounds as in JCGM 100:2008, 7.2.2: m = 100,021 47 g with u = 0,35 mg', () => {
    expect(roundPair(100.021468, 0.000351)).toEqual({ value: '100.02147', uncertainty: '0.00035' });
  });

  it('keeps two digits of the uncertainty, and rounds the value to its last one', () => {
    expect(roundPair(343.6149, 1.234)).toEqual({ value: '343.6', uncertainty: '1.2' });
    expect(roundPair(343.6149, 0.0996)).toEqual({ value: '343.61', uncertainty: '0.10' });
    expect(roundPair(343.6149, 0.93)).toEqual({ value: '343.61', uncertainty: '0.93' });
    expect(roundPair(343.6149, 35)).toEqual({ value: '344', uncertainty: '35' });
    expect(roundPair(343.6149, 350)).toEqual({ value: '340', uncertainty: '350' });
  });

  it('refuses an uncertainty that is none', () => {
    for (const uncertainty of [0, -1, NaN, Infinity]) {
      expect(() => roundPair(1, uncertainty)).toThrow(/uncertainty must be above 0/);
    }
  });
});

describe('signs', () => {
  it('uses a true minus and never writes a negative zero', () => {
    expect(fixed(-1.25, 1)).toMatch(/^−1\.[23]$/);
    expect(fixed(-0.01, 1)).toBe('0.0');
    expect(signed(0.4, 1)).toBe('+0.4');
    expect(signed(-0.4, 1)).toBe('−0.4');
    expect(signed(0.001, 1)).toBe('0.0');
  });

  it('counts 1st, 2nd, 3rd, 4th, 11th, 22nd', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 22, 101].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '22nd',
      '101st',
    ]);
  });
});

describe('numbers in words', () => {
  it.each([
    [0, '0'],
    [0.0996, '0.10'],
    [9.96, '10'],
    [-0.012, '−0.012'],
    [0.0000012, '0.0000012'],
    [3.4e-13, '3.4 · 10⁻¹³'],
    [123.4, '123'],
  ])('significant(%d, 2)', (value, words) => {
    expect(significant(value, 2)).toBe(words);
  });

  it.each([
    [512, '512'],
    [341.3, '341.3'],
    [382.4929302538505, '382.49'],
  ])('hertz(%d)', (hz, words) => {
    expect(hertz(hz)).toBe(words);
  });

  it('counts one and many', () => {
    expect([counted(1, 'degree'), counted(2, 'degree')]).toEqual(['1 degree', '2 degrees']);
    expect([0, 1, 2].map((count) => plural(count, 'mark waits', 'marks wait'))).toEqual([
      'marks wait',
      'mark waits',
      'marks wait',
    ]);
  });

  it('lists none, one, two and three', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(listed)).toEqual(['', 'a', 'a and b', 'a, b and c']);
  });

  it('writes a fork’s stamp whole or with one decimal', () => {
    expect([512, 426.6, 426.66].map(stampedHertz)).toEqual(['512', '426.6', '426.7']);
  });
});
