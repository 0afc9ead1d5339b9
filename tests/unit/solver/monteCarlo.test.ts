import { describe, expect, it } from 'vitest';
import { benchBlunders, benchLocated, benchSolver } from '../../bench/solver.ts';
import { BLUNDERS } from '../../bench/worlds/blunders.ts';
import { COVERAGE_WORLDS, measureCoverage } from '../../bench/worlds/coverageRows.ts';
import { measureBlunder } from '../../bench/worlds/measureBlunders.ts';

/*
 * A short run of `npm run bench:solver`, to notice when something breaks; the goals themselves are measured there, over
 * thousands. The limits allow for the chance of a few hundred: three standard deviations of a binomial count.
 */
describe('made-up experiments', () => {
  it('300 of 2–8 marks: orders right, no bias, intervals that hold', { timeout: 120_000 }, () => {
    const result = benchSolver(300, 1);
    expect(result.ordersRightPct).toBeGreaterThanOrEqual(99.5);
    expect(result.confidentlyWrong).toBe(0);
    expect(Math.abs(result.biasPct)).toBeLessThan(3 * result.biasStandardErrorPct);
    // 95 % ± 3·√(0.95·0.05/300) is 91.2 to 98.8 %.
    expect(result.coveragePct).toBeGreaterThan(91.2);
    expect(result.coveragePct).toBeLessThan(98.8);
    // Both textbook methods forget the walls: they must come out low.
    expect(result.differenceMethod.biasPct).toBeLessThan(-0.2);
    expect(result.firstResonance.biasPct).toBeLessThan(-0.2);
  });

  /*
   * 300 in each of two sets, one fork and two: 95 % ± 3·√(0.95·0.05/600) is 92.3 to 97.7 %, with half a per cent more
   * upwards, since loudest places are bounded and their intervals a little wide.
   */
  it.each([
    { isRiseKnown: true, name: 'rise stated' },
    { isRiseKnown: false, name: 'rise unknown' },
  ])('lengths at the loudest place, $name: intervals hold', { timeout: 120_000 }, ({ isRiseKnown }) => {
    const results = ([1, 2] as const).map((forks) =>
      benchLocated(300, 3, { at: 'loudest', rises: 'falling', isRiseKnown, readingM: 0.0007, forks }),
    );
    const mean = (results[0].coveragePct + results[1].coveragePct) / 2;
    expect(mean).toBeGreaterThan(92.3);
    expect(mean).toBeLessThan(98.2);
    for (const result of results) {
      expect(result.ordersWrong).toBe(0);
      expect(result.falseOutliersPct).toBeLessThan(0.5);
      // The very trouble: taken for the resonances themselves they cover two thirds to three quarters.
      expect(result.coverageWithoutPct).toBeLessThan(80);
    }
  });

  it('lengths at the shown centre: intervals hold and are hardly wider', { timeout: 120_000 }, () => {
    const results = ([1, 2] as const).map((forks) =>
      benchLocated(300, 4, { at: 'centre', rises: 'falling', isRiseKnown: true, readingM: 0.0007, forks }),
    );
    const mean = (results[0].coveragePct + results[1].coveragePct) / 2;
    expect(mean).toBeGreaterThan(92.3);
    expect(mean).toBeLessThan(98.2);
    for (const { intervalRatio } of results) {
      expect(intervalRatio).toBeGreaterThan(1);
      expect(intervalRatio).toBeLessThan(1.25);
    }
  });

  it('100 with a blunder of 1 cm: nearly all found', { timeout: 120_000 }, () => {
    // 98 % − 3·√(0.98·0.02/100).
    expect(benchBlunders(100, 2).foundPct).toBeGreaterThanOrEqual(94);
  });
});

/*
 * The same tables as `npm run bench:solver` prints, of a forward model that shares nothing with the solver; few, so that
 * only what breaks shows. 95 % less 3·√(0.95·0.05/120) is 89 %.
 */
describe('tables of an independent forward model', () => {
  it.each(COVERAGE_WORLDS.map(([title, world]) => ({ title, world })))(
    '120 of $title: intervals hold, orders right',
    { timeout: 120_000 },
    ({ world }) => {
      const row = measureCoverage(world, 120, 3);
      expect(row.coveragePct).toBeGreaterThan(89);
      expect(row.ordersRightPct).toBeGreaterThanOrEqual(99.5);
      // What covers because it claims nothing is no result.
      expect(row.medianExpandedPct).toBeLessThan(world.hasDiameter ? 2.2 : 4);
    },
  );

  it('both textbook methods forget the walls there, too', () => {
    const { difference, single } = measureCoverage(COVERAGE_WORLDS[0][1], 120, 4);
    expect(difference?.biasPct).toBeLessThan(-0.2);
    expect(single?.biasPct).toBeLessThan(-0.2);
    expect(difference?.benchErrorPct).toBeLessThan((difference?.errorPct ?? 0) / 2);
  });

  it.each(BLUNDERS.filter(({ title }) => /labelled|inches|closed noted|Fahrenheit/.test(title)))(
    'a blunder leaves no wrong table without an alarm: $title',
    { timeout: 120_000 },
    (blunder) => {
      const row = measureBlunder(blunder, { hasTemperature: true, hasDiameter: true }, 15, 5);
      expect(row.silentPct).toBe(0);
    },
  );
});
