import { expect } from 'vitest';
import { readFile } from '../../../../src/intake/readFile.ts';
import { experimentFromRows } from '../../../../src/intake/takeRows.ts';
import type { MarkRow } from '../../../../src/marks/markRow.ts';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { experimentJson } from '../../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../../src/report/marksCsv.ts';
import { expectSame } from './perform.ts';

/** Digits that get lost on the way through centimetres, millimetres and hectopascals. */
const RELATIVE = 1e-9;

/** What leaves the bench comes in again: the file as the very experiment, the table as far as a table can carry it. */
export async function expectExports(experiment: Experiment): Promise<void> {
  const { content, faults } = await readFile(new File([experimentJson(experiment)], 'x.json'));
  expect(faults).toEqual([]);
  expectSame(content, { kind: 'experiment', experiment }, 'the JSON file');
  const measured = experiment.marks.filter(({ lengthM }) => lengthM !== null);
  // A table without a row that counts is none.
  if (measured.every(({ excluded }) => excluded)) return;
  const rows = await rowsOf(marksCsv(experiment));
  expectRows(
    rows,
    measured.map((mark) => rowOf(experiment, mark)),
  );
  let count = 0;
  const outside = { newId: () => `row-${(count += 1)}`, now: experiment.createdAt };
  const taken = experimentFromRows('x', rows, outside);
  expect(taken.faults).toEqual([]);
  // What was heard of a resonance isn't made up from a table.
  const typed = rows.map(({ riseDb: _rise, centreStandardUncertaintyHalfWidths: _centre, ...row }) => row);
  expectRows(await rowsOf(marksCsv(taken.experiment)), typed);
}

async function rowsOf(csv: string): Promise<readonly MarkRow[]> {
  const { content, faults } = await readFile(new File([csv], 'x.csv'));
  expect(faults).toEqual([]);
  if (content?.kind !== 'table') throw new Error('a table was written');
  return content.rows;
}

/** What a table must say of a mark. Its place goes by whatever name tells it from others. */
function rowOf(experiment: Experiment, mark: Experiment['marks'][number]): Partial<MarkRow> {
  const { rule, tube } = experiment;
  const fork = experiment.forks.find(({ id }) => id === mark.forkId);
  const place = experiment.places.find(({ id }) => id === mark.placeId);
  const isMeasured = fork?.measuredHz !== null && fork?.measuredStandardUncertaintyHz !== null;
  return {
    forkHz: (isMeasured ? fork?.measuredHz : fork?.nominalHz) ?? 0,
    forkUncertaintyHz:
      (isMeasured ? fork?.measuredStandardUncertaintyHz : fork?.standardUncertaintyHz) ?? null,
    ends: mark.ends,
    lengthM: (mark.lengthM ?? 0) - rule.zeroOffsetM,
    otherLengthM: mark.otherLengthM === null ? null : mark.otherLengthM - rule.zeroOffsetM,
    lengthUncertaintyM: rule.readingStandardUncertaintyM,
    diameterM: tube.diameterM,
    otherDiameterM: tube.otherDiameterM,
    mouth: tube.mouth,
    filling: place?.filling ?? null,
    temperatureC: place?.temperatureC ?? null,
    temperatureUncertaintyC:
      place === undefined || place.temperatureC === null ? null : place.temperatureStandardUncertaintyC,
    co2MoleFraction: place?.co2MoleFraction ?? null,
    forkId: mark.forkId,
    humidityPct: place?.humidityPct ?? null,
    pressurePa: place?.pressurePa ?? null,
    order: mark.order,
    excluded: mark.excluded,
    madeAt: mark.createdAt,
    note: mark.note.replaceAll('\0', ''),
  };
}

/** Row by row, what the second list says of each. */
function expectRows(rows: readonly MarkRow[], wanted: readonly Partial<MarkRow>[]): void {
  expect(rows, 'a row for each length').toHaveLength(wanted.length);
  for (const [index, row] of rows.entries()) {
    for (const [name, value] of Object.entries(wanted[index] ?? {})) {
      const found = row[name as keyof MarkRow];
      const isNear =
        typeof found === 'number' &&
        typeof value === 'number' &&
        Math.abs(found - value) <= RELATIVE * Math.abs(value);
      if (!isNear) expect(found, `row ${index + 2}, ${name}`).toEqual(value);
    }
  }
}
