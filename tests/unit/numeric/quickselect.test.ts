import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowerMedian, quickselect, weightedMedian } from '../../../src/numeric/quickselect.ts';

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

describe('quickselect', () => {
  const values = fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 60 });

  it('gives the k-th smallest value, whatever the order, and loses none', () => {
    fc.assert(
      fc.property(values, fc.nat(), (given, any) => {
        const k = any % given.length;
        const reordered = Float64Array.from(given);
        const sorted = [...given].sort((a, b) => a - b);
        expect(quickselect(reordered, k) === sorted[k]).toBe(true);
        expect([...reordered].sort((a, b) => a - b).every((value, i) => value === sorted[i])).toBe(true);
      }),
      { numRuns: 1000, seed: 12 },
    );
  });

  it('takes the first values only where a count is given, and leaves the others where they are', () => {
    const some = Float64Array.of(5, 3, 4, 1, 2);
    expect(quickselect(some, 0, 3)).toBe(3);
    expect([...some.subarray(3)]).toEqual([1, 2]);
  });

  it('makes the lower median that weightedMedian gives for even weights', () => {
    fc.assert(
      fc.property(values, (given) => {
        const ones = new Float64Array(given.length).fill(1);
        const byWeight = weightedMedian(Float64Array.from(given), ones);
        expect(lowerMedian(Float64Array.from(given)) === byWeight).toBe(true);
      }),
    );
  });
});
