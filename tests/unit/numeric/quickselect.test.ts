import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weightedMedian } from '../../../src/numeric/quickselect.ts';

/** By its definition: in order of size, the first value up to which half of the weight lies. */
function bySorting(values: readonly number[], weights: readonly number[]): number {
  const order = values.map((_, i) => i).sort((a, b) => values[a] - values[b]);
  const half = weights.reduce((sum, weight) => sum + weight, 0) / 2;
  let sum = 0;
  for (const i of order) {
    sum += weights[i];
    if (sum >= half) return values[i];
  }
  throw new Error('no weight');
}

describe('weightedMedian', () => {
  it('is the value at which half of the weight is reached, whatever the order', () => {
    // Whole weights: sums are exact in any order.
    const pair = fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 0, max: 9 }));
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1, maxLength: 60 }), (pairs) => {
        fc.pre(pairs.some(([, weight]) => weight > 0));
        const values = pairs.map(([value]) => value);
        const weights = pairs.map(([, weight]) => weight);
        const found = weightedMedian(Float64Array.from(values), Float64Array.from(weights));
        expect(found).toBe(bySorting(values, weights));
      }),
      { numRuns: 2000, seed: 11 },
    );
  });

  it('with even weights is the lower middle value', () => {
    const ones = (count: number): Float64Array => new Float64Array(count).fill(1);
    expect(weightedMedian(Float64Array.of(3, 1, 2), ones(3))).toBe(2);
    expect(weightedMedian(Float64Array.of(4, 1, 3, 2), ones(4))).toBe(2);
  });
});
