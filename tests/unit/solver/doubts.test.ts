import { describe, expect, it } from 'vitest';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import type { Solution } from '../../../src/solver/solution.ts';
import type {
  OtherExplanation,
  SolverWarning,
  SolverWarningCode,
} from '../../../src/solver/solverWarning.ts';
import { prepareMarks } from '../../../src/solver/prepareMarks.ts';
import { solve } from '../../../src/solver/solve.ts';
import { areOrdersStrange } from '../../../src/solver/strangeOrders.ts';
import { makeMarks, solved } from './makeMarks.ts';

/** Rows of 512 Hz, closed, in a tube of 30 mm. */
function answer(lengthsCm: readonly number[], temperatureC: number | null = null): Solution {
  const rows = lengthsCm.map((lengthCm) => `512,closed,${lengthCm},30,${temperatureC ?? ''}`);
  const table = readMarksTable(['fork_hz,ends,length_cm,diameter_mm,temperature_c', ...rows].join('\n'));
  if (!table.ok) throw new Error('the table must be read');
  return solved(solve(marksOfRows(table.rows)));
}

function warning<C extends SolverWarningCode>(
  { warnings }: Solution,
  code: C,
): Extract<SolverWarning, { code: C }> | undefined {
  return warnings.find((one): one is Extract<SolverWarning, { code: C }> => one.code === code);
}

const named = (solution: Solution): readonly OtherExplanation[] =>
  warning(solution, 'other-explanation')?.explanations ?? [];

describe('a table that means something else', () => {
  // Steps of 35.65 cm are half a wave of 343 m/s at 481 Hz, of 365 m/s at 512 Hz.
  it('is a fork of 480 Hz labelled 512, though nobody read a thermometer', () => {
    const solution = answer([16.8, 52.4, 88.1]);
    expect(named(solution)[0]).toMatchObject({ kind: 'fork', notedHz: 512, fittingHz: 480 });
    expect(named(solution)[0]?.share).toBeGreaterThan(0.5);
    // 331.45·√(1 + t/273.15) = 366.5 m/s is 61 °C dry, some degrees less moist.
    const unusual = warning(solution, 'unusual-temperature');
    expect(unusual?.isCold).toBe(false);
    expect(unusual?.temperatureC).toBeGreaterThan(50);
    expect(unusual?.temperatureC).toBeLessThan(61);
  });

  // Quarter waves of 1007 m/s at 512 Hz: 49.2 and 147.5 cm, less the mouth.
  it.each([null, 20])('is helium that fits air by chance, at %s °C', (temperatureC) => {
    expect(named(answer([48.2, 146.6], temperatureC))[0]).toMatchObject({ kind: 'gas', gas: 'helium' });
  });

  it('is helium where a table begins with air’s fifth resonance', () => {
    expect(named(answer([146.6])).some((one) => one.kind === 'gas' && one.gas === 'helium')).toBe(true);
  });

  it('is millimetres typed as centimetres', () => {
    expect(named(answer([158, 492], 20))[0]).toMatchObject({ kind: 'unit', unit: 'millimetres' });
    expect(warning(answer([158, 492], 20), 'length-unit')?.unit).toBe('millimetres');
  });

  it('means what it says where it says what air does', () => {
    for (const temperatureC of [null, 20]) {
      const { warnings } = answer([15.8, 49.25, 82.7], temperatureC);
      expect(warnings.map(({ code }) => code)).not.toContain('other-explanation');
      expect(warnings.map(({ code }) => code)).not.toContain('unusual-temperature');
    }
  });
});

describe('orders that nobody measures', () => {
  it.each([
    [[1, 2], false],
    [[3, 4], false],
    [[4, 5], true],
    [[4, 5, 6, 7], true],
    [[1, 3], true],
    [[1, 3, 4], false],
  ])('%s: %s', (orders, isStrange) => {
    const { rows } = prepareMarks(makeMarks([{ hz: 512, orders }]), {});
    expect(areOrdersStrange(rows, orders)).toBe(isStrange);
  });
});

describe('air of a room without a thermometer', () => {
  // Dry air by the handbook's 331.45·√(1 + t/273.15), moisture 1 m/s at most; 3 marks know the speed to 1.4 m/s.
  it.each([
    [3, true],
    [22, null],
    [50, false],
  ])('is unusual at %s °C: %s', (temperatureC, isCold) => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2, 3] }], { temperatureC }).map((mark) => ({
      ...mark,
      air: null,
    }));
    expect(warning(solved(solve(marks)), 'unusual-temperature')?.isCold ?? null).toBe(isCold);
  });
});

describe('air as cold as the thermometer says', () => {
  it('is no implausible speed: 315.9 m/s at −25 °C by 331.45·√(1 + t/273.15)', () => {
    const { warnings, speedMps } = solved(
      solve(makeMarks([{ hz: 512, orders: [1, 2, 3] }], { temperatureC: -25 })),
    );
    expect(speedMps).toBeCloseTo(331.45 * Math.sqrt(1 - 25 / 273.15), 0);
    const codes = warnings.map(({ code }) => code);
    expect(codes).not.toContain('speed-implausible');
    expect(codes).not.toContain('differs-from-theory');
    expect(codes).toContain('air-beyond-formula');
  });
});

describe('one of six lengths that lies off', () => {
  const off = (byM: number): Solution =>
    solved(
      solve(
        makeMarks([{ hz: 512, orders: [1, 2, 3, 4, 5, 6] }]).map((mark, i) =>
          i === 2 ? { ...mark, lengthM: mark.lengthM + byM } : mark,
        ),
      ),
    );

  it('by three of its standard uncertainties is chance, once in 370 times, and stays', () => {
    expect(off(3 * 0.0007).marks.map(({ outlier }) => outlier)).not.toContain(true);
  });

  it('by six is none, and leaves', () => {
    expect(off(6 * 0.0007).marks.map(({ outlier }) => outlier)).toEqual([
      false,
      false,
      true,
      false,
      false,
      false,
    ]);
  });
});

describe('agreement with theory', () => {
  it('is E_n: the difference over both expanded uncertainties in squares, k = 2 for theory (ISO 13528:2022, 9.7)', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2, 3] }]);
    // Cramer 1993, dry air at 20 °C is 343.36 m/s and 0.625 m/s per kelvin: 3 K are 1.9 m/s.
    const air = { ...marks[0].air, temperatureC: 23 } as NonNullable<(typeof marks)[0]['air']>;
    const { agreement, theory, expandedUncertaintyMps } = solved(
      solve(marks.map((mark) => ({ ...mark, air }))),
    );
    const squares = expandedUncertaintyMps ** 2 + (2 * (theory?.standardUncertaintyMps ?? 0)) ** 2;
    expect(agreement?.differenceMps).toBeCloseTo(-1.9, 1);
    expect(agreement?.normalisedError).toBeCloseTo((agreement?.differenceMps ?? 0) / Math.sqrt(squares), 9);
  });
});

describe('orders that fit alike', () => {
  it('are told by the resonances that must have been passed over: odds of e^0.3 for each', () => {
    // 3.00 m at 512 Hz is the ninth resonance at 364 m/s and the tenth at 326: both ends of what air has.
    const [{ order, runnerUp, orderConfidence }] = answer([300]).marks;
    expect(order).toBe(9);
    expect(runnerUp?.order).toBe(10);
    expect(orderConfidence / (runnerUp?.share ?? 1)).toBeCloseTo(Math.exp(0.3), 1);
  });

  it('are told by a thermometer, which may have hung elsewhere once in ten times', () => {
    // 4.00 m is the twelfth at 359 m/s and the thirteenth at 330, that of 0 °C.
    const [{ order, orderConfidence }] = answer([400], 0).marks;
    expect(order).toBe(13);
    expect(orderConfidence).toBeGreaterThan(0.8);
    expect(answer([400], 45).marks[0].order).toBe(12);
  });
});

describe('repeatability (JCGM 100:2008, 4.2.2 and 4.2.4)', () => {
  it('is pooled over resonances that were read more than once, n − 1 each', () => {
    // (1² + 0² + 1²) mm² with two degrees of freedom, (1² + 1²) mm² with one: √(4/3) mm.
    const { repeatability } = answer([15.7, 15.8, 15.9, 49.15, 49.35, 82.7], 20);
    expect(repeatability?.standardDeviationM).toBeCloseTo(0.001 * Math.sqrt(4 / 3), 9);
    expect(repeatability?.degreesOfFreedom).toBe(3);
  });
});
