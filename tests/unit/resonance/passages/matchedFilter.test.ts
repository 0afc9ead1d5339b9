import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blankFit, keepDistinct } from '../../../../src/resonance/passages/matchedFilter.ts';
import type { PassageFit } from '../../../../src/resonance/passages/matchedFilter.ts';
import type { PassageTemplate } from '../../../../src/resonance/passages/passageTemplates.ts';

const RATE_HZ = 100;

function fit(middleS: number, halfWidthS: number, statistic: number): PassageFit {
  const template = { shape: { halfWidthS, ringUpRate: 30 } } as PassageTemplate;
  return { ...blankFit(template), middle: middleS * RATE_HZ, statistic };
}

/** Nearly the same width (a factor of 1.6) and place (0.05 s and the wider half width), as the docstring says. */
function isSame(a: PassageFit, b: PassageFit): boolean {
  const [narrow = 0, wide = 0] = [a, b]
    .map(({ template }) => template.shape.halfWidthS)
    .sort((x, y) => x - y);
  return wide / narrow <= 1.6 && Math.abs(a.middle - b.middle) / RATE_HZ <= 0.05 + wide;
}

describe('thinning out fits', () => {
  it('keeps the best of each place and width, and all that are apart', () => {
    const fits = [fit(1, 0.1, 7), fit(1.1, 0.12, 9), fit(1.1, 0.3, 8), fit(3, 0.1, 6), fit(1.2, 0.1, 5)];
    const kept = keepDistinct(fits, fits.length, RATE_HZ);
    expect(fits.slice(0, kept).map(({ statistic }) => statistic)).toEqual([9, 8, 6]);
  });

  it('gives what sorting and comparing one by one gives, and loses none of the room', () => {
    const anyFit = fc
      .tuple(fc.integer({ min: 0, max: 400 }), fc.constantFrom(0.05, 0.1, 0.15, 0.3), fc.nat(1_000_000))
      .map(([place, width, statistic]) => fit(place / 100, width, statistic));
    fc.assert(
      fc.property(
        fc.uniqueArray(anyFit, { maxLength: 40, selector: ({ statistic }) => statistic }),
        (fits) => {
          const expected: PassageFit[] = [];
          for (const one of [...fits].sort((a, b) => b.statistic - a.statistic)) {
            if (!expected.some((other) => isSame(one, other))) expected.push(one);
          }
          const room = [...fits];
          const kept = keepDistinct(room, room.length, RATE_HZ);
          expect(room.slice(0, kept)).toEqual(expected);
          expect(new Set(room)).toEqual(new Set(fits));
        },
      ),
    );
  });
});
