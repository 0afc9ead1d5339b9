import { describe, expect, it } from 'vitest';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { newFork } from '../../../src/notebook/newExperiment.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const experiment = {
  ...exampleExperiment([
    exampleMark('a', { lengthM: 0.1637, order: 1, note: '=HYPERLINK("x")' }),
    exampleMark('b', { lengthM: 0.50013, excluded: true }),
    exampleMark('c'),
  ]),
  rule: { readingStandardUncertaintyM: 0.0007, zeroOffsetM: 0.0042 },
  forks: [{ ...newFork('fork-1', 512), standardUncertaintyHz: 0.512 }],
  tube: { diameterM: 0.035, otherDiameterM: null, mouth: null, stopper: 'piston' as const, travelM: 1 },
};

describe('marksCsv', () => {
  it('is read back by the solver’s own table reader: zero offset off, full precision', () => {
    const table = readMarksTable(marksCsv(experiment));
    expect(table.ok && table.rows).toMatchObject([
      { forkHz: 512, ends: 'closed', order: 1, lengthUncertaintyM: 0.0007, forkUncertaintyHz: 0.512 },
      { excluded: true },
    ]);
    if (!table.ok) return;
    expect(table.rows[0]?.lengthM).toBeCloseTo(0.1595, 12);
    expect(table.rows[0]?.diameterM).toBeCloseTo(0.035, 12);
  });

  it('leaves out marks without a length, and names those that are left out of the fit', () => {
    const lines = marksCsv(experiment).trim().split('\r\n');
    expect(lines).toHaveLength(3);
    expect(lines[1]).toContain(',no,');
    expect(lines[2]).toContain(',yes,');
  });

  it('keeps a note from being run as a formula', () => {
    expect(marksCsv(experiment)).toContain(`"'=HYPERLINK(""x"")"`);
  });

  it('keeps two places of the same name apart', () => {
    const place = experiment.places[0];
    if (place === undefined) throw new Error('the example has a place');
    const twin = { ...experiment, places: [place, { ...place, id: 'place-2' }] };
    expect(marksCsv(twin)).toContain(',Lab 1,');
  });
});
