import { describe, expect, it } from 'vitest';
import { median } from '../../../src/numeric/median.ts';
import { OutOfRange, requireInRange } from '../../../src/numeric/requireInRange.ts';

it('the median is the middle value, the upper of two middle ones, and of nothing there is none', () => {
  expect([median([7]), median([4, 1, 3]), median([4, 1, 3, 2])]).toEqual([7, 3, 3]);
  expect(() => median([])).toThrow(RangeError);
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
