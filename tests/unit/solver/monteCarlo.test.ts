import { describe, expect, it } from 'vitest';
import { benchBlunders, benchSolver } from '../../bench/solver.ts';

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

  it('100 with a blunder of 1 cm: nearly all found', { timeout: 120_000 }, () => {
    // 98 % − 3·√(0.98·0.02/100).
    expect(benchBlunders(100, 2).foundPct).toBeGreaterThanOrEqual(94);
  });
});
