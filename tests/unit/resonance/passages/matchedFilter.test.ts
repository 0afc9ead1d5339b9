import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suppressNonMaxima } from '../../../../src/resonance/passages/matchedFilter.ts';
import type { TemplateMatch } from '../../../../src/resonance/passages/matchedFilter.ts';
import type { PassageTemplate } from '../../../../src/resonance/passages/passageTemplates.ts';

const RATE_HZ = 100;

function match(middleS: number, halfWidthS: number, statistic: number): TemplateMatch {
  const template = { shape: { halfWidthS, ringUpRate: 30 } } as PassageTemplate;
  const rest = { direction: 1, explained: 1, residual: 1, noiseMeanSquare: 1, background: 1 } as const;
  return { ...rest, template, middle: middleS * RATE_HZ, statistic };
}

/** Nearly the same width (a factor of 1.6) and place (0.05 s and the wider half width), as the docstring says. */
function isSame(a: TemplateMatch, b: TemplateMatch): boolean {
  const [narrow = 0, wide = 0] = [a, b]
    .map(({ template }) => template.shape.halfWidthS)
    .sort((x, y) => x - y);
  return wide / narrow <= 1.6 && Math.abs(a.middle - b.middle) / RATE_HZ <= 0.05 + wide;
}

describe('non-maximum suppression', () => {
  it('keeps the best of each place and width, and all that are apart', () => {
    const matches = [
      match(1, 0.1, 7),
      match(1.1, 0.12, 9),
      match(1.1, 0.3, 8),
      match(3, 0.1, 6),
      match(1.2, 0.1, 5),
    ];
    const kept = suppressNonMaxima(matches, RATE_HZ);
    expect(kept.map(({ statistic }) => statistic)).toEqual([9, 8, 6]);
  });

  it('gives what sorting and comparing one by one gives, and leaves what it was given as it was', () => {
    const anyMatch = fc
      .tuple(fc.integer({ min: 0, max: 400 }), fc.constantFrom(0.05, 0.1, 0.15, 0.3), fc.nat(1_000_000))
      .map(([place, width, statistic]) => match(place / 100, width, statistic));
    fc.assert(
      fc.property(
        fc.uniqueArray(anyMatch, { maxLength: 40, selector: ({ statistic }) => statistic }),
        (matches) => {
          const expected: TemplateMatch[] = [];
          for (const one of [...matches].sort((a, b) => b.statistic - a.statistic)) {
            if (!expected.some((other) => isSame(one, other))) expected.push(one);
          }
          const given = [...matches];
          expect(suppressNonMaxima(given, RATE_HZ)).toEqual(expected);
          expect(given).toEqual(matches);
        },
      ),
    );
  });
});
