import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitDelimited } from '../../../src/marks/delimited.ts';
import { copyTable } from '../../../src/report/copyTable.ts';
import { toCsv } from '../../../src/report/csv.ts';
import { EXPERIMENT_TABLES } from '../../../src/report/tables/experimentTables.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const trace = { startS: 2, stepS: 0.5, toneDb: [-40, null], roomDb: [-60, -61] };
const evidence = { ...EXAMPLE_EVIDENCE, trace };
const experiment = {
  ...exampleExperiment([
    exampleMark('a', { lengthM: 0.162, evidence }),
    exampleMark('b', { lengthM: 0.4965 }),
    exampleMark('c', { lengthM: 0.831, otherLengthM: 0.833 }),
  ]),
  rule: { readingStandardUncertaintyM: 0.0005, zeroOffsetM: 0.004 },
  tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston' as const, travelM: 1 },
};
const { places } = solveExperiment(experiment);
const solution = places[0]?.solution;

function table(id: string): Record<string, unknown>[] {
  const [heading = [], ...rows] =
    EXPERIMENT_TABLES.find((one) => one.id === id)?.rows(experiment, places) ?? [];
  return rows.map((row) => Object.fromEntries(heading.map((name, index) => [String(name), row[index]])));
}

describe('the tables that leave', () => {
  it('say whether they have rows without making them', () => {
    fc.assert(
      fc.property(anyExperiment, (any) => {
        const solved = solveExperiment(any).places;
        for (const one of EXPERIMENT_TABLES) {
          expect(one.hasRows(any, solved), one.id).toBe(one.rows(any, solved).length > 1);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('fit: length is fitted length plus residual, orders from the solver', () => {
    const rows = table('fit');
    expect(rows.map((row) => row['order'])).toEqual([1, 2, 3]);
    for (const row of rows) {
      const sum = Number(row['fitted_length_cm']) + Number(row['residual_mm']) / 10;
      expect(sum).toBeCloseTo(Number(row['length_cm']), 9);
    }
    expect(rows[0]?.['length_cm']).toBeCloseTo(15.8, 9);
    // The middle of 83.1 and 83.3 cm, 4 mm of zero offset off.
    expect(rows[2]?.['length_cm']).toBeCloseTo(82.8, 9);
    for (const row of rows) expect(Math.abs(Number(row['residual_mm']))).toBeLessThan(3);
  });

  it('result: the solver’s numbers unrounded', () => {
    if (solution === undefined || solution.speedMps === null) throw new Error('this example has a result');
    expect(table('result')).toMatchObject([
      {
        speed_mps: solution.speedMps,
        standard_uncertainty_mps: solution.standardUncertaintyMps,
        theory_mps: null,
      },
    ]);
  });

  it('budget: the squares of the contributions make up the variance', () => {
    if (solution === undefined || solution.speedMps === null) throw new Error('this example has a result');
    const sum = table('budget').reduce((total, row) => total + Number(row['contribution_mps']) ** 2, 0);
    const share = table('budget').reduce((total, row) => total + Number(row['share_of_variance_pct']), 0);
    expect(Math.sqrt(sum)).toBeCloseTo(solution.standardUncertaintyMps, 9);
    expect(share).toBeCloseTo(100, 9);
  });

  it('trace: a row a point, on the source’s time, empty where no tone was heard', () => {
    expect(table('trace')).toEqual([
      { mark: 1, passage: 1, time_s: 2, tone_db: -40, room_db: -60, rise_db: 20 },
      { mark: 1, passage: 1, time_s: 2.5, tone_db: null, room_db: -61, rise_db: null },
    ]);
  });

  it('any experiment: each row has a cell a heading, as CSV and as copied', () => {
    fc.assert(
      fc.property(anyExperiment, (any) => {
        const solved = solveExperiment(any).places;
        for (const { rows } of EXPERIMENT_TABLES) {
          const cells = rows(any, solved);
          const width = cells[0]?.length ?? 0;
          const read = splitDelimited(toCsv(cells), ',');
          expect(read.fault).toBeNull();
          expect(read.records.map((record) => record.cells.length)).toEqual(cells.map(() => width));
          const lines = copyTable(cells).text.split('\r\n').slice(0, -1);
          expect(lines.map((line) => line.split('\t').length)).toEqual(cells.map(() => width));
        }
      }),
      { numRuns: 20 },
    );
  }, 60_000);
});

describe('copyTable', () => {
  it('makes formulas harmless in both forms, escapes markup, keeps numbers', () => {
    const { text, html } = copyTable([
      ['name', 'value'],
      ['=1+1', -2.5],
      ['<b>\tx', null],
    ]);
    expect(text).toBe("name\tvalue\r\n'=1+1\t-2.5\r\n<b> x\t\r\n");
    expect(html).toContain('<td>&#39;=1+1</td><td>-2.5</td>');
    expect(html).toContain('&lt;b&gt; x');
  });
});
