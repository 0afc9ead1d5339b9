import { describe, expect, it } from 'vitest';
import { readingTaken } from '../../../src/marks/readingTaken.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { solverMarks } from '../../../src/session/experiment/solverMarks.ts';
import { measuredMarks } from '../../../src/notebook/measuredMarks.ts';
import { residualPlot } from '../../../src/report/plots/fitPlot.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

// A rule read to a millimetre, and hands that stop some millimetres beside the place they look for: judgements, which
// stand in usualUncertainties.ts. What is tested is which of them is taken where.
describe('a reading whose uncertainty', () => {
  it('is stated stays as stated, however the place was found', () => {
    for (const locatedBy of ['centre', 'loudest', null] as const) {
      const taken = { lengthStandardUncertaintyM: 0.0004, isReadingAssumed: false };
      expect(readingTaken(0.0004, locatedBy)).toEqual(taken);
    }
  });

  it('nobody stated has 2.5 mm by ear, which scatter may correct, and 1 mm at a shown centre', () => {
    const byEar = { lengthStandardUncertaintyM: 0.0025, isReadingAssumed: true };
    expect(readingTaken(null, null)).toEqual(byEar);
    expect(readingTaken(null, 'loudest')).toEqual(byEar);
    expect(readingTaken(null, 'centre')).toEqual({
      lengthStandardUncertaintyM: 0.001,
      isReadingAssumed: false,
    });
  });

  it('nobody stated is the same to the solver on the page and in a table', () => {
    const experiment = exampleExperiment([
      exampleMark('a', { lengthM: 0.158 }),
      exampleMark('b', { lengthM: 0.4925, locatedBy: 'centre' }),
    ]);
    const table = readMarksTable(marksCsv(experiment));
    if (!table.ok) throw new Error('a table was written');
    expect(table.rows.map(({ lengthUncertaintyM }) => lengthUncertaintyM)).toEqual([null, null]);
    const onPage = solverMarks(experiment, measuredMarks(experiment));
    const inTable = marksOfRows(table.rows);
    for (const [i, mark] of onPage.entries()) {
      const { lengthStandardUncertaintyM, isReadingAssumed } = mark;
      expect(inTable[i]).toMatchObject({ lengthStandardUncertaintyM, isReadingAssumed });
    }
  });
});

describe('the picture of what the fit leaves over', () => {
  it('has bars of what was stated, or of what the solver took and the scatter made of it', () => {
    const marks = [0.158, 0.4925, 0.827].map((lengthM, i) => exampleMark(`mark-${i}`, { lengthM }));
    const bare = exampleExperiment(marks);
    const stated = { ...bare, rule: { readingStandardUncertaintyM: 0.0007, zeroOffsetM: 0 } };
    const barsOf = (experiment: typeof bare) => {
      const solution = solveExperiment(experiment).places[0]?.solution;
      if (solution === undefined || solution.speedMps === null) throw new Error('three lengths have a speed');
      const reading = solution.budget.find(({ source }) => source === 'reading');
      const bars = residualPlot(experiment, solution).points.map(({ yBar }) => yBar);
      return { bars, takenMm: 1000 * (reading?.standardUncertainty ?? 0) };
    };
    for (const bar of barsOf(stated).bars) expect(bar).toBeCloseTo(0.7, 9);
    const { bars, takenMm } = barsOf(bare);
    expect(takenMm).toBeGreaterThan(0);
    for (const bar of bars) expect(bar).toBeCloseTo(takenMm, 9);
  });
});

describe('marks that are the same in everything', () => {
  const at = (createdAt: string) => ({ lengthM: 0.158, createdAt });

  it('count as one, where they came in with one table', () => {
    const same = [
      exampleMark('a', at('2030-03-01T10:00:00.000Z')),
      exampleMark('b', at('2030-03-01T10:00:00.000Z')),
    ];
    const experiment = exampleExperiment(same);
    expect(solverMarks(experiment, measuredMarks(experiment)).map(({ copies }) => copies)).toEqual([2, 2]);
  });

  it('are readings of their own where they were made or heard one after the other', () => {
    const typed = [
      exampleMark('a', at('2030-03-01T10:00:00.000Z')),
      exampleMark('b', at('2030-03-01T10:00:09.000Z')),
    ];
    const heard = typed.map((mark, i) => ({
      ...mark,
      createdAt: '2030-03-01T10:00:00.000Z',
      evidence: { ...EXAMPLE_EVIDENCE, timeS: 2 + i },
    }));
    for (const marks of [typed, heard]) {
      const experiment = exampleExperiment(marks);
      expect(solverMarks(experiment, measuredMarks(experiment)).map(({ copies }) => copies)).toEqual([1, 1]);
    }
  });
});
