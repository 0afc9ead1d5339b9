import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/intake/readFile.ts';
import { experimentFromRows, takeRows } from '../../../src/intake/takeRows.ts';
import type { MarkRow } from '../../../src/marks/markRow.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { measuredMarks } from '../../../src/notebook/measuredMarks.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { PLAIN_ROW } from '../../support/plainRow.ts';
import { cpuMs } from '../../support/cpuMs.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

function outside() {
  let count = 0;
  return { newId: () => `new-${(count += 1)}`, now: '2031-01-01T00:00:00.000Z' };
}

async function rowsOf(csv: string): Promise<readonly MarkRow[]> {
  const { content, faults } = await readFile(new File([csv], 'x.csv'));
  expect(faults).toEqual([]);
  if (content?.kind !== 'table') throw new Error('a table was written');
  return content.rows;
}

/** The page takes no length below 1 cm, and a table of excluded rows is no table. */
const tabled = anyExperiment.filter(
  (experiment) =>
    measuredMarks(experiment).some((mark) => !mark.excluded) &&
    measuredMarks(experiment).every(({ lengthM, otherLengthM }) =>
      [lengthM, otherLengthM].every((m) => m === null || m - experiment.rule.zeroOffsetM > 0.011),
    ),
);
/** Columns that only show what was heard, which a table can't give back. */
const SHOWN = 3;
function withoutShown(csv: string): string[] {
  const cells = csv
    .trim()
    .split('\r\n')
    .map((line) => line.split(','));
  const from = cells[0]?.indexOf('rise_db') ?? 0;
  return cells.map((row) => [...row.slice(0, from), ...row.slice(from + SHOWN)].join(','));
}
/** Cell by cell; lengths came through cm and back, so that the last digits of a number may differ. */
function expectSameTable(one: readonly string[], other: readonly string[]): void {
  const cells = (lines: readonly string[]): string[] => lines.flatMap((line) => line.split(','));
  expect(one).toHaveLength(other.length);
  for (const [at, cell] of cells(one).entries()) {
    const expected = cells(other)[at] ?? '';
    if (cell === expected) continue;
    expect(Math.abs(Number(cell) - Number(expected))).toBeLessThan(1e-9 * Math.abs(Number(expected)));
  }
}

describe('what leaves comes back', () => {
  it('JSON: the very same experiment', async () => {
    await fc.assert(
      fc.asyncProperty(anyExperiment, async (experiment) => {
        const intake = await readFile(new File([experimentJson(experiment)], 'x.json'));
        expect(intake).toMatchObject({ content: { kind: 'experiment' }, faults: [] });
        if (intake.content?.kind === 'experiment') expect(intake.content.experiment).toEqual(experiment);
      }),
      { numRuns: 300 },
    );
  }, 60_000);

  it('CSV: the same table of marks, whatever their notes and places hold', async () => {
    await fc.assert(
      fc.asyncProperty(tabled, async (experiment) => {
        const plain = {
          ...experiment,
          marks: experiment.marks.map((mark) => ({ ...mark, note: mark.note.replace(/[,\r\n\0]/g, '') })),
          places: experiment.places.map((place) => ({
            ...place,
            name: place.name.replace(/[,\r\n\0]/g, '').trim(),
          })),
        };
        const csv = marksCsv(plain);
        const taken = experimentFromRows('x', await rowsOf(csv), outside());
        expect(taken.faults).toEqual([]);
        expect(readExperiment(JSON.parse(experimentJson(taken.experiment)))).toEqual({
          kind: 'experiment',
          experiment: taken.experiment,
        });
        expectSameTable(withoutShown(marksCsv(taken.experiment)), withoutShown(csv));
      }),
      { numRuns: 200 },
    );
  }, 60_000);

  it('CSV: the same speeds', async () => {
    const closed: Experiment = {
      ...exampleExperiment([0.163, 0.4975, 0.833].map((lengthM, i) => exampleMark(`m${i}`, { lengthM }))),
      rule: { readingStandardUncertaintyM: 0.0007, zeroOffsetM: 0.005 },
      tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
    };
    const [before] = solveExperiment(closed).places;
    const [after] = solveExperiment(
      experimentFromRows('x', await rowsOf(marksCsv(closed)), outside()).experiment,
    ).places;
    const speedOf = (place: typeof before): number[] =>
      place === undefined || place.solution.speedMps === null
        ? []
        : [place.solution.speedMps, place.solution.expandedUncertaintyMps];
    expect(speedOf(before)).toHaveLength(2);
    expect(speedOf(after).map((value) => value.toFixed(7))).toEqual(
      speedOf(before).map((value) => value.toFixed(7)),
    );
  });
});

describe('takeRows', () => {
  const row = (change: Partial<MarkRow>): MarkRow => ({ ...PLAIN_ROW, ...change });

  it('adds to the fork and the place that are there, and puts the zero offset back', () => {
    const base = {
      ...exampleExperiment([exampleMark('a')]),
      rule: { readingStandardUncertaintyM: 0.001, zeroOffsetM: 0.004 },
    };
    const { experiment, remarks } = takeRows(base, [row({})], outside());
    expect(experiment.marks).toHaveLength(2);
    expect(experiment.marks[1]).toMatchObject({ forkId: 'fork-1', placeId: 'place-1', lengthM: 0.162 });
    expect(experiment.forks).toEqual(base.forks);
    expect(remarks[0]).toContain('4 mm is added again');
  });

  it('adds forks and places that are new', () => {
    const rows = [
      row({ forkHz: 384, place: 'Yard', temperatureC: 6 }),
      row({ forkHz: 384, place: 'Yard', temperatureC: 7 }),
    ];
    const { experiment } = takeRows(exampleExperiment(), rows, outside());
    expect(experiment.forks.map(({ nominalHz }) => nominalHz)).toEqual([512, 384]);
    expect(experiment.places.map(({ name, temperatureC }) => [name, temperatureC])).toEqual([
      ['Lab', null],
      ['Yard', 6],
      ['Yard', 7],
    ]);
  });

  it('names rows that don’t belong: another tube, an order beyond all', () => {
    const rows = [row({ diameterM: 0.03 }), row({ row: 3, diameterM: 0.05 }), row({ row: 4, order: 150 })];
    const { experiment, faults } = takeRows(exampleExperiment(), rows, outside());
    expect(experiment.marks).toHaveLength(1);
    expect(faults.map(({ row: at, column }) => [at, column])).toEqual([
      [3, 'diameter_mm'],
      [4, 'order'],
    ]);
  });

  it('takes five thousand rows of as many places and forks within a second', () => {
    const rows = Array.from({ length: 6000 }, (_, i) =>
      row({ row: i + 2, place: `p${i}`, forkHz: 100 + i / 10 }),
    );
    const start = cpuMs();
    const { experiment, faults } = takeRows(exampleExperiment(), rows, outside());
    expect(cpuMs() - start).toBeLessThan(1000);
    expect(readExperiment(JSON.parse(experimentJson(experiment))).kind).toBe('experiment');
    expect(experiment.marks.length + faults.length).toBe(6000);
  });
});
