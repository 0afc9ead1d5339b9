import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import type { SolverMark } from '../../../src/solver/solution.ts';
import { solve } from '../../../src/solver/solve.ts';
import { solved } from './makeMarks.ts';
import { SOLVER_TOLERANCES } from './tolerances.ts';

/*
 * Lengths that another model made, from impedances and other constants of air: see the head of the file and
 * `tests/support/column`. What both models mean by a speed must agree.
 */
const text = readFileSync(resolve(import.meta.dirname, '../../../fixtures/impedance-columns.csv'), 'utf8');

interface FixedTable {
  readonly marks: readonly SolverMark[];
  readonly trueSpeedMps: number;
  readonly trueOrders: readonly number[];
}

/** By their names in the first column. */
function tables(): ReadonlyMap<string, FixedTable> {
  const table = readMarksTable(text);
  if (!table.ok) throw new Error('the fixture must be read');
  const marks = marksOfRows(table.rows);
  const [heading, ...lines] = text
    .trim()
    .split('\n')
    .filter((line) => !line.startsWith('#'))
    .map((line) => line.split(','));
  const numbersOf = (rows: readonly (readonly string[])[], column: string): number[] =>
    rows.map((cells) => Number(cells[heading.indexOf(column)]));
  if (marks.length !== lines.length) throw new Error('a row of the fixture was dropped');
  return new Map(
    [...new Set(marks.map(({ place }) => place))].map((name) => {
      const rows = lines.filter((cells) => cells[0] === name);
      return [
        name,
        {
          marks: marks.filter(({ place }) => place === name),
          trueSpeedMps: numbersOf(rows, 'true_speed_mps')[0],
          trueOrders: numbersOf(rows, 'true_order'),
        },
      ];
    }),
  );
}

describe('lengths of an independent forward model', () => {
  const all = [...tables()].map(([name, table]) => ({ name, ...table }));

  it('are twelve tables', () => {
    expect(all.map(({ marks }) => marks.length)).toEqual([3, 3, 7, 3, 5, 5, 3, 3, 4, 2, 1, 3]);
  });

  it.each(all)('$name: the speed within its stated uncertainty, orders right', (table) => {
    const solution = solved(solve(table.marks));
    expect(Math.abs(solution.speedMps - table.trueSpeedMps)).toBeLessThan(solution.expandedUncertaintyMps);
    expect(solution.marks.map(({ order }) => order)).toEqual(table.trueOrders);
    expect(solution.marks.some(({ outlier }) => outlier)).toBe(false);
  });

  it.each(all.filter(({ marks }) => marks.length > 2))(
    '$name: walls and mouth leave nothing of their own in the speed',
    ({ marks, trueSpeedMps }) => {
      // Both models say the same of walls to 0.3 % of their slowing. Lengths read to a micrometre outweigh whatever is
      // known of mouths, and the fit finds the one there is.
      const exact = {
        lengthStandardUncertaintyM: 1e-6,
        locatedBy: 'centre',
        isReadingAssumed: false,
      } as const;
      const { speedMps } = solved(
        solve(
          marks.map((mark) => ({ ...mark, ...exact, centreStandardUncertaintyHalfWidths: 0 })),
          { rule: { zeroStandardUncertaintyM: 0, scaleStandardUncertainty: 0 } },
        ),
      );
      expect(Math.abs(speedMps / trueSpeedMps - 1)).toBeLessThan(SOLVER_TOLERANCES.twoModels);
    },
  );
});
