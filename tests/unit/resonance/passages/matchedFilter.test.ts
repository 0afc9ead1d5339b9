import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DecimatedView } from '../../../../src/resonance/passages/decimatedView.ts';
import { matchAt, suppressNonMaxima } from '../../../../src/resonance/passages/matchedFilter.ts';
import type { TemplateMatch } from '../../../../src/resonance/passages/matchedFilter.ts';
import { oneRingUp, templateBank } from '../../../../src/resonance/passages/passageTemplates.ts';
import type { PassageTemplate } from '../../../../src/resonance/passages/passageTemplates.ts';
import { viewOf } from '../../../../src/resonance/toneView.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';

const RATE_HZ = 100;

function match(middleS: number, halfWidthS: number, statistic: number): TemplateMatch {
  const template = { shape: { halfWidthS, ringUpRate: 30 } } as PassageTemplate;
  const energies = { explained: 1, opposite: 1, residual: 1, noiseMeanSquare: 1 } as const;
  return { ...energies, template, direction: 1, background: 1, middle: middleS * RATE_HZ, statistic };
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

describe('which way the phase turns', () => {
  const HALF_WIDTH_S = 0.18;
  /** Energies that the shape of a growing column explains, and the same turning the other way. */
  function energies(imOf: (x: number) => number) {
    const bank = templateBank(RATE_HZ, [
      { lookAheadS: (halfWidthS) => 4 * halfWidthS, ringUpRates: oneRingUp },
    ]);
    const template = bank.find(({ shape }) => shape.halfWidthS === HALF_WIDTH_S);
    if (template === undefined) throw new Error('no such shape');
    const x = Array.from({ length: 400 }, (_, k) => (k / RATE_HZ - 2) / HALF_WIDTH_S);
    const series = new ToneSeries(RATE_HZ, 50);
    series.pushValues(
      x.map((value) => 1 / (1 + value * value)),
      x.map(imOf),
      x.length,
    );
    const cells = new DecimatedView(template.step);
    const view = viewOf(series, 0, series.length, 0);
    cells.fill(view, 0, cells.cellsIn(view));
    const middle = Math.round(200 / template.step);
    return matchAt(cells, { template, direction: 1, middle, background: 0 });
  }

  it('is told by a resonator’s path 1/(1 ± ix): one way explains far more than the other', () => {
    // The overlap of 1/(1 + ix) with its conjugate is the integral of 1/(1 + ix)², which is 0 over all x.
    const [one, other] = [1, -1].map((way) => energies((x) => (way * x) / (1 + x * x)));
    const ratios = [one, other].map(({ explained, opposite }) => explained / opposite).sort((a, b) => a - b);
    expect(ratios[0]).toBeLessThan(0.1);
    expect(ratios[1]).toBeGreaterThan(10);
    expect(one.explained).toBeCloseTo(other.opposite, 6);
  });

  it('can’t be told where only the amplitude changed: a path on a line is its own mirror image', () => {
    const { explained, opposite } = energies(() => 0);
    expect(explained).toBeGreaterThan(0);
    expect(explained / opposite).toBeCloseTo(1, 9);
  });
});
