import { describe, expect, it } from 'vitest';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import type { Solution } from '../../../src/solver/solution.ts';
import type { SolverWarning, SolverWarningCode } from '../../../src/solver/solverWarning.ts';
import { solve } from '../../../src/solver/solve.ts';
import { makeMarks, solved } from './makeMarks.ts';

function solveRows(rows: readonly string[], columns = ''): Solution {
  const table = readMarksTable([`fork_hz,ends,length_cm${columns}`, ...rows].join('\n'));
  if (!table.ok) throw new Error('the table must be read');
  return solved(solve(marksOfRows(table.rows)));
}

function found<C extends SolverWarningCode>(
  { warnings }: Solution,
  code: C,
): Extract<SolverWarning, { code: C }> | undefined {
  return warnings.find((one): one is Extract<SolverWarning, { code: C }> => one.code === code);
}

/** Lengths of a closed column at its orders, L = (2n − 1)·v/4f − e (any textbook), in cm. */
const closedCm = (speedMps: number, hz: number, endCm: number, orders: readonly number[]): number[] =>
  orders.map((order) => ((2 * order - 1) * 100 * speedMps) / (4 * hz) - endCm);

describe('numbers that mean something else', () => {
  it('a fork of 480 Hz noted as 512 Hz: the air would be too warm, and the fork is named', () => {
    const lengths = closedCm(343.5, 480, 1.1, [1, 2, 3]);
    const solution = solveRows(lengths.map((cm) => `512,closed,${cm.toFixed(1)}`));
    const { temperatureC, isCold } = found(solution, 'unusual-temperature') ?? {};
    // 343.5 · 512/480 = 366.4 m/s; by the classroom rule 331.3 + 0.606 t that is 58 °C (common practice), by ISO 9613-1's
    // root of the absolute temperature 61 °C in dry air; moist air has it some kelvin lower.
    expect(isCold).toBe(false);
    expect(temperatureC).toBeGreaterThan(48);
    expect(temperatureC).toBeLessThan(62);
    expect(found(solution, 'other-explanation')?.explanations[0]).toMatchObject({
      kind: 'fork',
      fittingHz: 480,
    });
  });

  it('helium whose orders 1 and 2 pass for 2 and 5 of air', () => {
    // Helium at 20 °C: √(5/3 · 8.314 J/mol K · 293 K / 4.0026 g/mol) = 1007 m/s.
    const lengths = closedCm(1007, 512, 1.1, [1, 2]);
    const solution = solveRows(lengths.map((cm) => `512,closed,${cm.toFixed(1)}`));
    expect(solution.marks.map(({ order }) => order)).toEqual([2, 5]);
    const explanations = found(solution, 'other-explanation')?.explanations ?? [];
    expect(explanations[0]).toMatchObject({ kind: 'gas', gas: 'helium' });
    expect(explanations[0].share).toBeGreaterThan(0.3);
  });

  it('millimetres typed as centimetres that fall on high orders', () => {
    const [one] = closedCm(343.5, 512, 1.1, [1]);
    const [other] = closedCm(343.5, 480, 1.1, [1]);
    const solution = solveRows([
      `512,closed,${(10 * one).toFixed(0)}`,
      `480,closed,${(10 * other).toFixed(0)}`,
    ]);
    expect(found(solution, 'other-explanation')?.explanations[0]).toMatchObject({
      kind: 'unit',
      unit: 'millimetres',
    });
  });

  it('not where the first resonances are there and the air is a room’s', () => {
    for (const orders of [[1], [1, 2], [1, 2, 3], [2, 3]]) {
      const lengths = closedCm(343.5, 512, 1.1, orders);
      const solution = solveRows(lengths.map((cm) => `512,closed,${cm.toFixed(2)}`));
      expect(found(solution, 'other-explanation')).toBeUndefined();
      expect(found(solution, 'unusual-temperature')).toBeUndefined();
    }
  });

  it('not where somebody says what is meant: a range of speeds, or orders', () => {
    // Helium's first two, as above.
    const rows = ['512,closed,48.1', '512,closed,146.4'];
    expect(found(solveRows(rows), 'other-explanation')).toBeDefined();
    const ordered = rows.map((row, i) => `${row},${2 + 3 * i}`);
    expect(found(solveRows(ordered, ',order'), 'other-explanation')).toBeUndefined();
    const table = readMarksTable(['fork_hz,ends,length_cm', ...rows].join('\n'));
    if (!table.ok) throw new Error('the table must be read');
    const ranged = solved(solve(marksOfRows(table.rows), { speedRangeMps: [330, 360] }));
    expect(found(ranged, 'other-explanation')).toBeUndefined();
  });
});

describe('a speed without a thermometer', () => {
  it('stands for the temperature that air of this speed has', () => {
    const lengths = closedCm(343.99, 512, 1.1, [1, 2, 3]);
    const solution = solveRows(lengths.map((cm) => `512,closed,${cm.toFixed(3)}`));
    // Cramer 1993: 343.98673 m/s at 20 °C and 50 % (computed table); one kelvin is 0.6 m/s.
    const { temperatureC = null } = found(solution, 'no-temperature') ?? {};
    expect(Math.abs((temperatureC ?? 0) - 20 - (solution.speedMps - 343.987) / 0.606)).toBeLessThan(0.1);
  });
});

describe('what nothing could show', () => {
  const unchecked = (orders: readonly number[]) =>
    found(solved(solve(makeMarks([{ hz: 512, orders }]))), 'unchecked');

  it('is said of two lengths, of which each fits whatever it is', () => {
    expect(unchecked([1, 2])).toMatchObject({ keys: ['m1', 'm2'], isAll: true });
    expect(unchecked([1, 2, 3])).toBeUndefined();
  });

  it('is said of the one length that no other stands beside', () => {
    expect(unchecked([1, 1, 2])).toMatchObject({ keys: ['m3'], isAll: false });
  });
});

describe('rows that are there twice', () => {
  const rows = ['512,closed,15.7', '512,closed,49.2', '512,closed,83.1'];

  it('change nothing, and are asked about', () => {
    const once = solveRows(rows);
    const often = solveRows(Array.from({ length: 10 }, () => rows).flat());
    expect(often.speedMps).toBeCloseTo(once.speedMps, 6);
    expect(often.expandedUncertaintyMps).toBeCloseTo(once.expandedUncertaintyMps, 6);
    expect(found(often, 'exact-repeats')?.copies).toBe(27);
    expect(found(once, 'exact-repeats')).toBeUndefined();
  });

  it('are readings of their own where they were made at different times', () => {
    const timed = (minute: number): string[] => rows.map((row) => `${row},2026-03-02T10:0${minute}:00Z`);
    const once = solveRows(timed(1), ',made_at');
    const twice = solveRows([...timed(1), ...timed(2)], ',made_at');
    expect(found(twice, 'exact-repeats')).toBeUndefined();
    expect(twice.expandedUncertaintyMps).toBeLessThan(once.expandedUncertaintyMps);
  });

  it('give a Type A estimate where they differ: pooled, by hand', () => {
    // 15.6, 15.8 about 15.7 and 49.1, 49.3, 49.2 about 49.2: squares 0.02 and 0.02 cm², degrees 1 and 2.
    const repeated = ['15.6', '15.8', '49.1', '49.3', '49.2'].map((cm) => `512,closed,${cm}`);
    const { repeatability } = solveRows(repeated);
    expect(repeatability?.degreesOfFreedom).toBe(3);
    expect(repeatability?.standardDeviationM).toBeCloseTo(0.01 * Math.sqrt(0.04 / 3), 9);
    expect(solveRows(rows).repeatability).toBeNull();
  });
});

describe('forks that are written in two ways', () => {
  const forkLines = ({ budget }: Solution): number => budget.filter(({ source }) => source === 'fork').length;

  it('are one fork with one error, and that is said', () => {
    const solution = solveRows(['512,closed,15.7', '511.8,closed,49.2']);
    expect(forkLines(solution)).toBe(1);
    expect(found(solution, 'forks-alike')?.frequenciesHz).toEqual([512, 511.8]);
  });

  it('are two where both were measured well enough to tell', () => {
    const solution = solveRows(['512,closed,15.7,0.02', '511.8,closed,49.2,0.02'], ',fork_uncertainty_hz');
    expect(forkLines(solution)).toBe(2);
    expect(found(solution, 'forks-alike')).toBeUndefined();
  });
});

describe('a tube too wide for plane waves', () => {
  it('is named: 60 mm at 3000 Hz is ka = 1.65', () => {
    // 2π · 3000 Hz · 30 mm / 343 m/s; the first cross mode of a round tube is at 1.841 (zero of J₁′).
    const solution = solveRows(
      ['3000,closed,2.1,60,20', '3000,closed,7.8,60,20'],
      ',diameter_mm,temperature_c',
    );
    expect(found(solution, 'tube-too-wide')?.ka).toBeCloseTo((2 * Math.PI * 3000 * 0.03) / 344, 2);
    const narrow = solveRows(['512,closed,15.7,60,20'], ',diameter_mm,temperature_c');
    expect(found(narrow, 'tube-too-wide')).toBeUndefined();
  });
});
