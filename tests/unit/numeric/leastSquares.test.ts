import { describe, expect, it } from 'vitest';
import { chiSquaredLimit } from '../../../src/numeric/chiSquared.ts';
import { independentErrors, invertCovariance } from '../../../src/numeric/errorModel.ts';
import { fitYork } from '../../../src/numeric/fitYork.ts';
import { fitLinear } from '../../../src/numeric/leastSquares.ts';
import { coverageFactor } from '../../../src/numeric/studentT.ts';
import { NORRIS } from './norris.ts';
import { FIT_TOLERANCES } from '../solver/tolerances.ts';

const relative = (actual: number | undefined, expected: number, tolerance: number): void =>
  expect(Math.abs((actual ?? NaN) / expected - 1), `${actual} against ${expected}`).toBeLessThanOrEqual(
    tolerance,
  );
const absolute = (actual: number | undefined, expected: number, tolerance: number): void =>
  expect(Math.abs((actual ?? NaN) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(
    tolerance,
  );

function plainFit(columns: readonly (readonly number[])[], y: readonly number[]) {
  const fit = fitLinear(columns, y, independentErrors(y.map(() => 1)));
  if (fit === null) throw new Error('the columns determine no fit');
  const s = Math.sqrt(fit.chiSquared / fit.degreesOfFreedom);
  return { fit, s, sd: (i: number) => s * Math.sqrt(fit.covariance[i]?.[i] ?? NaN) };
}

describe('GUM (JCGM 100:2008), annex H.3, calibration of a thermometer', () => {
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];

  it('has intercept, slope, their uncertainties, correlation, scatter and prediction as printed', () => {
    const { fit, s, sd } = plainFit([t.map(() => 1), t.map((value) => value - 20)], b);
    absolute(fit.parameters[0], -0.1712, FIT_TOLERANCES.gumOffset);
    absolute(fit.parameters[1], 0.00218, FIT_TOLERANCES.gumSlope);
    absolute(sd(0), 0.0029, FIT_TOLERANCES.gumOffset);
    absolute(sd(1), 0.00067, FIT_TOLERANCES.gumSlope);
    absolute(s, 0.0035, FIT_TOLERANCES.gumOffset);
    const covariance = fit.covariance[0]?.[1] ?? NaN;
    absolute((s * s * covariance) / (sd(0) * sd(1)), -0.93, 0.0005);
    absolute(
      (fit.parameters[0] ?? NaN) + 10 * (fit.parameters[1] ?? NaN),
      -0.1494,
      FIT_TOLERANCES.gumPrediction,
    );
    const variance =
      (fit.covariance[0]?.[0] ?? NaN) + 20 * covariance + 100 * (fit.covariance[1]?.[1] ?? NaN);
    absolute(s * Math.sqrt(variance), 0.0041, FIT_TOLERANCES.gumPrediction);
  });
});

describe('NIST Statistical Reference Datasets, linear regression', () => {
  it('Norris to 10 digits', () => {
    const { fit, s, sd } = plainFit(
      [NORRIS.map(() => 1), NORRIS.map(([, x]) => x)],
      NORRIS.map(([y]) => y),
    );
    relative(fit.parameters[0], -0.262323073774029, FIT_TOLERANCES.nist);
    relative(fit.parameters[1], 1.00211681802045, FIT_TOLERANCES.nist);
    relative(sd(0), 0.232818234301152, FIT_TOLERANCES.nist);
    relative(sd(1), 0.429796848199937e-3, FIT_TOLERANCES.nist);
    relative(s, 0.884796396144373, FIT_TOLERANCES.nist);
  });

  it('NoInt1 to 10 digits', () => {
    const x = Array.from({ length: 11 }, (_, i) => 60 + i);
    const { fit, s, sd } = plainFit(
      [x],
      x.map((value) => value + 70),
    );
    relative(fit.parameters[0], 2.07438016528926, FIT_TOLERANCES.nist);
    relative(sd(0), 0.0165289256198347, FIT_TOLERANCES.nist);
    relative(s, 3.56753034006338, FIT_TOLERANCES.nist);
  });
});

describe('Pearson’s data with York’s weights (York et al. 2004, Am. J. Phys. 72, 367)', () => {
  const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
  const wx = [1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1];
  const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
  const wy = [1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500];
  const points = x.map((value, i) => ({
    x: value,
    xStandardUncertainty: 1 / Math.sqrt(wx[i] ?? NaN),
    y: y[i] ?? NaN,
    yStandardUncertainty: 1 / Math.sqrt(wy[i] ?? NaN),
  }));

  it('gives his slope and intercept with their uncertainties', () => {
    const line = fitYork(points);
    relative(line?.slope, -0.4805334, FIT_TOLERANCES.york);
    relative(line?.intercept, 5.4799102, FIT_TOLERANCES.york);
    relative(line?.slopeStandardUncertainty, 0.057985, 2e-6);
    relative(line?.interceptStandardUncertainty, 0.2949707, FIT_TOLERANCES.york);
  });

  it('gives no line through one x or one point', () => {
    expect(fitYork(points.slice(0, 1))).toBeNull();
    expect(fitYork(points.map((point) => ({ ...point, x: 1 })))).toBeNull();
  });
});

describe('Student’s t, two-sided 95 % (computed)', () => {
  it.each([
    [1, 12.7062],
    [2, 4.3027],
    [3, 3.1824],
    [4, 2.7764],
    [5, 2.5706],
    [8, 2.306],
    [10, 2.2281],
    [20, 2.086],
    [1e6, 1.96],
  ])('ν = %s: %s', (degrees, factor) => absolute(coverageFactor(degrees), factor, FIT_TOLERANCES.studentT));

  it('refuses ν below a half', () => {
    expect(() => coverageFactor(0)).toThrow('degreesOfFreedom must be >= 0.5, got 0');
  });
});

describe('χ², upper 5 % and 0.1 % (evaluated with another numerical library)', () => {
  it.each([
    [1, 3.8415, 10.8276],
    [2, 5.9915, 13.8155],
    [3, 7.8147, 16.2662],
    [5, 11.0705, 20.515],
    [10, 18.307, 29.5883],
    [30, 43.773, 59.7031],
    [100, 124.3421, 149.4493],
  ])('ν = %s: %s and %s', (degrees, limit, rare) => {
    relative(chiSquaredLimit(degrees), limit, FIT_TOLERANCES.chiSquared);
    relative(chiSquaredLimit(degrees, 0.999), rare, FIT_TOLERANCES.chiSquared);
  });

  it('begins at ν = 1', () => {
    expect(() => chiSquaredLimit(0)).toThrow('degreesOfFreedom must be >= 1, got 0');
  });
});

describe('shared errors', () => {
  const model = {
    variances: [1, 2, 3, 4],
    // The finer groups 0 and 2 lie within the coarser 0, the finer 1 is the coarser 1.
    partitions: [
      { groups: [0, 1, 2, 1], errors: [0.4, 0.9, -0.6, 1.1] },
      { groups: [0, 1, 0, 1], errors: [0.5, 1, 1.5, 2] },
    ],
    commonErrors: [
      [1, 1, 1, 1],
      [0.1, 0.7, -0.3, 0.2],
    ],
  };

  it('are inverted as the full covariance would be: V·V⁻¹ = 1', () => {
    const full = model.variances.map((variance, i) =>
      model.variances.map((_, j) => {
        const own = i === j ? variance : 0;
        const grouped = model.partitions.reduce(
          (sum, { groups, errors }) =>
            groups[i] === groups[j] ? sum + (errors[i] ?? 0) * (errors[j] ?? 0) : sum,
          0,
        );
        return model.commonErrors.reduce((sum, q) => sum + (q[i] ?? 0) * (q[j] ?? 0), own + grouped);
      }),
    );
    const inverse = invertCovariance(model);
    for (const [j] of full.entries()) {
      const column = inverse.times(full.map((row) => row[j] ?? 0));
      for (const [i, value] of column.entries()) absolute(value, i === j ? 1 : 0, 1e-12);
      const unit = inverse.times(full.map((_, i) => (i === j ? 1 : 0)));
      absolute(unit[j], inverse.diagonal[j] ?? NaN, 1e-12);
    }
  });

  it('of all values alike leave a slope untouched and blur the intercept', () => {
    const x = [1, 2, 3, 4];
    const y = [1.1, 1.9, 3.2, 3.9];
    const columns = [x.map(() => 1), x];
    const alone = fitLinear(columns, y, independentErrors(x.map(() => 0.01)));
    const shared = fitLinear(columns, y, {
      ...independentErrors(x.map(() => 0.01)),
      commonErrors: [x.map(() => 5)],
    });
    relative(shared?.parameters[1], alone?.parameters[1] ?? NaN, FIT_TOLERANCES.exact);
    relative(shared?.covariance[1]?.[1], alone?.covariance[1]?.[1] ?? NaN, 1e-6);
    relative(shared?.covariance[0]?.[0], (alone?.covariance[0]?.[0] ?? NaN) + 25, 1e-6);
  });

  it('columns that are alike determine nothing', () => {
    expect(
      fitLinear(
        [
          [1, 1],
          [2, 2],
        ],
        [1, 2],
        independentErrors([1, 1]),
      ),
    ).toBeNull();
    expect(fitLinear([[1], [2]], [1], independentErrors([1]))).toBeNull();
  });
});
