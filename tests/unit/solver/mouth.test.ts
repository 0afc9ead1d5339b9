import { describe, expect, it } from 'vitest';
import { endRatioOfMouth, MOUTH_SHAPES } from '../../../src/air/mouth.ts';
import { solve } from '../../../src/solver/solve.ts';
import { makeMarks, solved, trueSpeedMps } from './makeMarks.ts';

/** Interpolation between a thin rim and a flange; outer over inner radius. Dalmont, Nederveen & Joly 2001, eq. 42. */
function thickRim(innerOverOuter: number): number {
  const [thin, flange] = [0.6133, 0.8216];
  return flange + innerOverOuter * (thin - flange) + 0.057 * innerOverOuter * (1 - innerOverOuter ** 5);
}

describe('what is known of mouths', () => {
  it('holds the published values: thin rim 0.6133, flange 0.8216 (Levine & Schwinger 1948, Nomura 1960)', () => {
    expect(endRatioOfMouth('thin-rim').ratio).toBeCloseTo(0.6133, 4);
    expect(endRatioOfMouth('flange').ratio).toBeCloseTo(0.8216, 4);
    expect(endRatioOfMouth('ideal').ratio).toBe(0);
  });

  it('covers walls from a tenth to a half of the radius with a thick rim’s twofold uncertainty', () => {
    const { ratio, standardUncertainty } = endRatioOfMouth('thick-rim');
    for (const outer of [1.1, 1.2, 1.3, 1.5])
      expect(Math.abs(thickRim(1 / outer) - ratio)).toBeLessThan(2 * standardUncertainty);
  });

  it('covers every described mouth but the ideal one where none is described', () => {
    const unknown = endRatioOfMouth(null);
    for (const mouth of MOUTH_SHAPES.filter((one) => one !== 'ideal'))
      expect(Math.abs(endRatioOfMouth(mouth).ratio - unknown.ratio)).toBeLessThan(
        1.5 * unknown.standardUncertainty,
      );
  });
});

describe('a mouth', () => {
  /** Lengths of a column whose mouth is a flange: shorter than with a thin rim by 0.2083 radii. */
  const flanged = (orders: readonly number[], mouth: 'flange' | 'thin-rim' | null) =>
    solved(
      solve(
        makeMarks([{ hz: 512, orders }], { mouth }).map((mark) => ({
          ...mark,
          lengthM: mark.lengthM - 0.2083 * 0.015,
        })),
      ),
    );

  it('said to be a flange makes one length right, which a thin rim would make 2 % slow', () => {
    expect(Math.abs(flanged([1], 'flange').speedMps / trueSpeedMps() - 1)).toBeLessThan(0.001);
    expect(flanged([1], 'thin-rim').speedMps / trueSpeedMps() - 1).toBeLessThan(-0.015);
  });

  it('not described covers it, with an interval that says so', () => {
    const { speedMps, expandedUncertaintyMps } = flanged([1], null);
    expect(Math.abs(speedMps - trueSpeedMps())).toBeLessThan(expandedUncertaintyMps);
  });

  it('described wrongly yields to marks that know better', () => {
    const many = flanged([1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4], 'thin-rim');
    expect(Math.abs(many.speedMps - trueSpeedMps())).toBeLessThan(many.expandedUncertaintyMps);
    expect(many.endCorrectionOfMarks?.endCorrectionM).toBeCloseTo((0.61 + 0.2083) * 0.015, 4);
  });

  it('that gave way is told as wide as it counted, in the budget and in the working', () => {
    const { budget, working } = flanged([1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4], 'thin-rim');
    const line = budget.find(({ source }) => source === 'end');
    // The mouths differ by 0.2083 radii, nearly seven of a thin rim's 0.03: what lies beyond two is allowed for.
    expect(line?.standardUncertainty).toBeGreaterThan(0.15);
    expect(line?.standardUncertainty).toBeLessThan(0.2083);
    const fit = working.find((step) => step.kind === 'fit-of-all-marks');
    expect(fit?.known?.standardUncertainty).toBe(line?.standardUncertainty);
  });

  it('of an exercise has no end correction: 512 Hz at 16.8 cm is 344 m/s (CK-12)', () => {
    const [mark] = makeMarks([{ hz: 512, orders: [1] }], { mouth: 'ideal', air: null });
    const solution = solved(solve([{ ...mark, lengthM: 0.168, radiusM: null }]));
    expect(solution.speedMps).toBeCloseTo(4 * 512 * 0.168, 1);
  });
});

describe('r(v, e)', () => {
  it('of two lengths is that of a straight line: r = Σx/√(n·Σx²)', () => {
    // L = x·v − e with equal errors: the slope's and the intercept's estimates correlate so (any text on regression); here
    // intercept = −e. Errors that lengths share would add to it.
    const [near, far] = makeMarks([{ hz: 512, orders: [1, 2] }], {
      mouth: null,
      frequencyStandardUncertaintyHz: 0,
      lengthStandardUncertaintyM: 1e-4,
    });
    const options = { rule: { zeroStandardUncertaintyM: 0, scaleStandardUncertainty: 0 } };
    const { speedEndCorrelation, budget, standardUncertaintyMps } = solved(solve([near, far], options));
    const [x1, x2] = [1, 3];
    const ofLine = (x1 + x2) / Math.sqrt(2 * (x1 * x1 + x2 * x2));
    // The walls' slowing is an error of the speed alone: it lowers r by the part that the readings have in u(v).
    const reading = budget.find(({ source }) => source === 'reading')?.contributionMps ?? 0;
    expect(Math.abs(speedEndCorrelation - (ofLine * reading) / standardUncertaintyMps)).toBeLessThan(0.01);
  });
});
