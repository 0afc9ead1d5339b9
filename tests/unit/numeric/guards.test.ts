import { describe, expect, it } from 'vitest';
import { at } from '../../../src/numeric/at.ts';
import { invertCovariance } from '../../../src/numeric/errorModel.ts';
import { fitLinear } from '../../../src/numeric/leastSquares.ts';
import { median } from '../../../src/numeric/median.ts';
import { OutOfRange, requireInRange } from '../../../src/numeric/requireInRange.ts';

describe('a list that lacks an entry', () => {
  it('is a fault that says which index of which range', () => {
    expect(at([2, 3, 5], 2)).toBe(5);
    expect(() => at([2, 3, 5], 3)).toThrow('index must be 0..2, got 3');
    expect(() => at(new Float64Array(1), -1)).toThrow('index must be 0..0, got -1');
  });

  it('stops a fit, which a zero in its place would let pass', () => {
    const errors = { variances: [1, 1, 1], groups: [0, 0, 0], groupErrors: [0, 0], commonErrors: [] };
    expect(() => invertCovariance(errors)).toThrow(RangeError);
    expect(() => fitLinear([[1, 1]], [1, 2, 3], { ...errors, groupErrors: [0, 0, 0] })).toThrow(RangeError);
  });

  it('has no median when it is empty', () => {
    expect(() => median([])).toThrow(RangeError);
    expect([median([7]), median([4, 1, 3]), median([4, 1, 3, 2])]).toEqual([7, 3, 3]);
  });
});

describe('an argument outside of its range', () => {
  it('is refused with name, range and value, as text and as fields', () => {
    const refuse = (): void => requireInRange('humidityPct', 101, 0, 100);
    expect(refuse).toThrow(RangeError);
    expect(refuse).toThrow('humidityPct must be 0..100, got 101');
    expect(refuse).toThrow(
      expect.objectContaining({ quantity: 'humidityPct', lowest: 0, highest: 100, value: 101 }) as Error,
    );
    expect(() => requireInRange('lengthM', NaN, 0, 1)).toThrow(OutOfRange);
    expect(() => requireInRange('lengthM', 1, 0, 1)).not.toThrow();
  });
});
