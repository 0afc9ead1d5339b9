import { describe, expect, it } from 'vitest';
import { airTemperature } from '../../../src/solver/airTemperature.ts';
import { compare } from '../../../src/solver/compare.ts';
import { endRatio } from '../../../src/solver/endRatio.ts';
import { GASES, speedInGasMps } from '../../../src/air/gases.ts';
import { heatRatioPerMolarMass, matchGases } from '../../../src/solver/otherGas.ts';
import { nextMarks } from '../../../src/solver/plan.ts';
import { pooledMean } from '../../../src/solver/pooledMean.ts';
import { solve } from '../../../src/solver/solve.ts';
import { unknownFork } from '../../../src/solver/unknownFork.ts';
import { comparisonWords, noComparisonWords } from '../../../src/words/comparison.ts';
import { makeMarks, solved, trueSpeedMps } from './makeMarks.ts';

/** Groups and marks that go by their keys. */
const asIs = (key: string): string => key;
const WANTED = [{ hz: 512, orders: [1, 2, 3] }];

describe('compare', () => {
  const hall = { key: 'the hall', marks: makeMarks(WANTED, { temperatureC: 22, place: 'hall' }) };
  const yard = { key: 'the yard', marks: makeMarks(WANTED, { temperatureC: 8, place: 'yard' }) };

  it('lets the common fork and rule cancel', () => {
    const comparison = compare(hall, yard);
    if (comparison.differenceMps === null) throw new Error('no comparison');
    expect(comparison.differenceMps).toBeCloseTo(trueSpeedMps(22) - trueSpeedMps(8), 5);
    // Alone each has 0.34 m/s from the fork; of that only 2.4 %, the difference of the speeds, is left.
    const reading = Math.hypot(
      ...[hall, yard].map(
        ({ marks }) =>
          solved(solve(marks)).budget.find(({ source }) => source === 'reading')?.contributionMps ?? 0,
      ),
    );
    expect(comparison.standardUncertaintyMps).toBeGreaterThanOrEqual(reading);
    expect(comparison.standardUncertaintyMps).toBeLessThan(1.01 * reading);
    expect(comparison.uncertaintyWithoutSharingMps).toBeGreaterThan(1.2 * comparison.standardUncertaintyMps);
  });

  it('lets loudest places of one setup cancel, and those of two places not', () => {
    const located = { locatedBy: 'loudest', riseDb: 8 } as const;
    const loudest = (place: string, temperatureC: number) =>
      makeMarks(WANTED, { temperatureC, place, ...located });
    const ofPlaces = (one: string, other: string) => {
      const comparison = compare(
        { key: 'one', marks: loudest(one, 20) },
        { key: 'other', marks: loudest(other, 20) },
      );
      if (comparison.differenceMps === null) throw new Error('no comparison');
      return comparison.standardUncertaintyMps;
    };
    const line = solved(solve(loudest('hall', 20))).budget.find(({ source }) => source === 'loudest');
    const own = line?.contributionMps ?? 0;
    expect(own).toBeGreaterThan(0.3);
    // What two independent errors of this size add, in quadrature.
    expect(ofPlaces('hall', 'yard')).toBeCloseTo(Math.hypot(ofPlaces('hall', 'hall'), own, own), 6);
  });

  it('says in words that a real difference is real and agrees with theory', () => {
    const comparison = compare(hall, yard);
    if (comparison.differenceMps === null) throw new Error('no comparison');
    expect(comparison.isReal).toBe(true);
    const words = comparisonWords(comparison, asIs);
    expect(words).toMatch(
      /^“the hall” against “the yard”: [\d.]+ m\/s faster, ± [\d.]+ m\/s \(95 %\)\. The difference is real\./,
    );
    expect(words).toMatch(/Theory predicts [\d.]+ m\/s faster for their air\. The two agree\.$/);
  });

  it('says that there is no difference where the marks can’t show one', () => {
    const again = { key: 'the hall again', marks: makeMarks(WANTED, { temperatureC: 22.2 }) };
    const comparison = compare(hall, again);
    if (comparison.differenceMps === null) throw new Error('no comparison');
    expect(comparison.isReal).toBe(false);
    expect(comparisonWords(comparison, asIs)).toContain('These marks show no real difference.');
  });

  it('names the group that has no result', () => {
    const comparison = compare(hall, { key: 'nowhere', marks: [] });
    expect(comparison.differenceMps).toBeNull();
    if (comparison.differenceMps === null)
      expect(noComparisonWords(comparison, asIs, asIs)[0]).toMatch(/^nowhere: /);
  });
});

describe('pooled mean', () => {
  const group = (value: number, i: number, standardUncertainty = 0.5) => ({
    name: `group ${i}`,
    value,
    standardUncertainty,
  });

  it('of groups that agree is the weighted mean', () => {
    const pooled = pooledMean([343.9, 344.0, 344.1, 344.05].map((value, i) => group(value, i)));
    expect(pooled?.betweenGroups).toBe(0);
    expect(pooled?.value).toBeCloseTo(344.0125, 10);
    expect(pooled?.standardUncertainty).toBeCloseTo(0.25, 10);
  });

  it('meets the condition of Paule & Mandel 1982: the weighted squares equal the degrees of freedom', () => {
    const values = [342.0, 343.5, 344.0, 345.2, 346.1];
    const uncertainties = [0.3, 0.5, 0.4, 0.6, 0.5];
    const pooled = pooledMean(values.map((value, i) => group(value, i, uncertainties[i])));
    if (pooled === null) throw new Error('no mean');
    const squares = values.reduce(
      (sum, value, i) =>
        sum + (value - pooled.value) ** 2 / ((uncertainties[i] ?? 1) ** 2 + pooled.betweenGroups ** 2),
      0,
    );
    expect(squares).toBeCloseTo(4, 8);
    // Solved with another numerical library.
    expect(pooled.betweenGroups).toBeCloseTo(1.519234, 5);
    expect(pooled.value).toBeCloseTo(344.121906, 5);
    expect(pooled.standardUncertainty).toBeCloseTo(0.710881, 5);
    expect(pooled.outlying).toEqual([]);
  });

  it('leaves out a group that lies off and names it', () => {
    const pooled = pooledMean([343.6, 344.2, 343.9, 344.4, 331].map((value, i) => group(value, i)));
    expect(pooled?.outlying).toEqual(['group 4']);
    expect(pooled?.value).toBeCloseTo(344.025, 6);
  });

  it('of one group is that group, and of none is null', () => {
    expect(pooledMean([group(344, 1)])?.standardUncertainty).toBeCloseTo(0.5, 12);
    expect(pooledMean([group(NaN, 1)])).toBeNull();
    expect(pooledMean([])).toBeNull();
  });
});

describe('turned round', () => {
  const speed = { speedMps: trueSpeedMps(), standardUncertaintyMps: 0.3 };

  it.each([
    ['with a rough pitch', 430],
    ['from the lengths alone', null],
  ])('an unknown fork has its pitch %s', (_name, approximateHz) => {
    const found = unknownFork(makeMarks([{ hz: 426.6, orders: [1, 2, 3] }]), speed, approximateHz);
    expect(found?.frequencyHz).toBeCloseTo(426.6, 4);
    expect(found?.orders).toEqual([1, 2, 3]);
    // The speed's 0.087 % and the lengths' 2·0.7 mm/√8 of a wave of 0.8 m, in squares: 0.1 %.
    expect((found?.standardUncertaintyHz ?? 0) / 426.6).toBeGreaterThan(0.0009);
    expect((found?.standardUncertaintyHz ?? 1) / 426.6).toBeLessThan(0.002);
  });

  it('an unknown fork gives null where there is nothing to go by', () => {
    expect(unknownFork([], speed, null)).toBeNull();
    expect(unknownFork([], speed, 512)).toBeNull();
    expect(unknownFork(makeMarks(WANTED), { speedMps: -1, standardUncertaintyMps: 1 }, 512)).toBeNull();
  });

  it('OpenStax University Physics 1, 17.4: 256 Hz at 0.336 m is air of 22.0 °C', () => {
    // e = 0 and no walls in the book, so the speed is 4·256 Hz·0.336 m; its rule 331·√(T/273) is Cramer's within 0.5 K for dry air.
    const found = airTemperature({ speedMps: 4 * 256 * 0.336, standardUncertaintyMps: 0.3 }, 0);
    expect(Math.abs((found?.temperatureC ?? 0) - 22)).toBeLessThan(1);
  });

  it('air of 343.98673 m/s, half moist, has 20 °C (Cramer 1993, computed), uncertain by u(c) over 0.62 m/s per kelvin', () => {
    const found = airTemperature({ speedMps: 343.98673, standardUncertaintyMps: 0.3 }, 50);
    // His appendix takes another saturation pressure: 0.0002 m/s.
    expect(found?.temperatureC).toBeCloseTo(20, 3);
    expect(found?.standardUncertaintyC).toBeCloseTo(Math.hypot(0.3, 0.124) / 0.6247, 2);
    expect(airTemperature({ speedMps: 900, standardUncertaintyMps: 1 })).toBeNull();
  });

  it.each([
    /*
     * Speeds at 20 °C and one atmosphere, m/s, as tables of real gases give them (from memory): each within half a per
     * cent of √(γRT/M), which is what is stated for it; sulfur hexafluoride is the least ideal.
     */
    ['helium', 1008, 0.002],
    ['argon', 319, 0.002],
    ['nitrogen', 349, 0.002],
    ['oxygen', 326, 0.002],
    ['carbon-dioxide', 267, 0.005],
    ['sulfur-hexafluoride', 134.5, 0.006],
  ])('%s is recognised by its speed', (id, speedMps, tolerance) => {
    const gas = GASES.find((one) => one.id === id);
    if (gas === undefined) throw new Error(id);
    expect(Math.abs(speedInGasMps(gas, 20) / speedMps - 1)).toBeLessThan(tolerance);
    expect(matchGases({ speedMps, standardUncertaintyMps: 1 }, 20)[0]?.gas.id).toBe(id);
  });

  it('gives γ of air when its molar mass is known: 1.40', () => {
    const { value } = heatRatioPerMolarMass({ speedMps: 343.36, standardUncertaintyMps: 0.3 }, 20);
    expect(value * 0.0289655).toBeCloseTo(1.401, 3);
  });

  it('e/a comes from tubes of several diameters, and the rule’s zero falls out', () => {
    const tubes = [0.01, 0.015, 0.02, 0.03].map((radiusM) => ({
      radiusM,
      radiusStandardUncertaintyM: 0.0001,
      endCorrectionM: 0.6133 * radiusM + 0.004,
      endCorrectionStandardUncertaintyM: 0.0007,
    }));
    const found = endRatio(tubes);
    expect(found?.ratio).toBeCloseTo(0.6133, 10);
    expect(found?.zeroM).toBeCloseTo(0.004, 10);
    expect(endRatio(tubes.slice(0, 1))).toBeNull();
  });
});

describe('plan', () => {
  it('promises the uncertainty that the next mark then really brings', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2] }]);
    const fork = { forkKey: '512', frequencyHz: 512, frequencyStandardUncertaintyHz: 0.512 };
    const means = { forks: [fork], ends: ['closed'] as const, travelM: 1.2 };
    const [best] = nextMarks(marks, means);
    // The longest lever gains most.
    expect(best?.order).toBe(4);
    expect(best?.gain).toBeGreaterThan(0.2);
    const after = solved(solve(makeMarks([{ hz: 512, orders: [1, 2, 4] }])));
    expect(best?.standardUncertaintyMps).toBeCloseTo(after.standardUncertaintyMps, 6);
    // At loudest places, too, whose errors grow with the length.
    const unstated = { locatedBy: 'loudest', riseDb: null } as const;
    const [loudest] = nextMarks(makeMarks([{ hz: 512, orders: [1, 2] }], unstated), means);
    const withIt = makeMarks([{ hz: 512, orders: [1, 2, loudest?.order ?? 0] }], unstated);
    expect(loudest?.standardUncertaintyMps).toBeCloseTo(solved(solve(withIt)).standardUncertaintyMps, 6);
    const repeats = nextMarks(marks, means)
      .filter(({ isRepeat }) => isRepeat)
      .map(({ order }) => order)
      .sort();
    expect(repeats).toEqual([1, 2]);
    expect(nextMarks([], means)).toEqual([]);
  });
});
