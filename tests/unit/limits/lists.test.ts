import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/intake/readFile.ts';
import { experimentFromRows, takeRows } from '../../../src/intake/takeRows.ts';
import { LONGEST } from '../../../src/limits/longest.ts';
import { LARGEST_JSON_BYTES, LARGEST_RECORD_BYTES } from '../../../src/limits/sizes.ts';
import type { Mark } from '../../../src/marks/mark.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { newFork, newPlace } from '../../../src/notebook/newExperiment.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { recordBytes } from '../../../src/notebook/recordBytes.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { cpuMs } from '../../support/cpuMs.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest, told } from '../session/benchInTest.ts';
import { outside, rowsOf } from './everyWay.ts';
import { PLAIN_ROW } from '../../support/plainRow.ts';

const many = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index));
const waiting = (count: number, change: Partial<Mark> = {}): Mark[] =>
  many(count, (index) => exampleMark(`mark-${index}`, change));

function benchWith(experiment: Experiment) {
  const bench = benchInTest();
  expect(bench.change('open file', () => experiment)).toBe(true);
  return bench;
}

describe('full lists', () => {
  it('refuse one more mark, whoever adds it, and stay as they are', () => {
    const bench = benchWith(exampleExperiment(waiting(LONGEST.list)));
    bench.addMarkByHand(0.158);
    expect(bench.experiment.marks).toHaveLength(LONGEST.list);
    expect(told(bench)).toBe(
      'An experiment holds 5000 marks at most. Begin another experiment for more (Records).',
    );
    expect(readExperiment(bench.experiment).kind).toBe('experiment');
  });

  it('of deleted marks refuse one more: none is dropped', () => {
    const bench = benchWith({
      ...exampleExperiment([exampleMark('last')]),
      deletedMarks: waiting(LONGEST.list),
    });
    bench.deleteMark('last');
    expect(bench.experiment.marks.map(({ id }) => id)).toEqual(['last']);
    expect(bench.experiment.deletedMarks).toHaveLength(LONGEST.list);
    expect(told(bench)).toContain('5000 deleted marks at most. Bring some back');
  });

  it('let no deleted mark come back', () => {
    const bench = benchWith({
      ...exampleExperiment(waiting(LONGEST.list)),
      deletedMarks: [exampleMark('gone')],
    });
    bench.restoreMark('gone');
    expect(bench.experiment.deletedMarks.map(({ id }) => id)).toEqual(['gone']);
    expect(told(bench)).toContain('5000 marks at most');
  });

  it('take no more forks and places', () => {
    const example = exampleExperiment();
    const forks = [...example.forks, ...many(LONGEST.list - 1, (index) => newFork(`f${index}`, 512))];
    const places = [...example.places, ...many(LONGEST.list - 1, (index) => newPlace(`p${index}`, 'x'))];
    const bench = benchWith({ ...example, forks, places });
    const more = { forks: [...forks, newFork('f', 256)], places: [...places, newPlace('p', 'y')] };
    for (const list of ['forks', 'places'] as const) {
      expect(bench.change('add fork', (now) => ({ ...now, [list]: more[list] }))).toBe(false);
      expect(told(bench)).toContain(`5000 ${list} at most. Remove one that has no marks.`);
    }
  });

  it('name each row of a table that finds no room', () => {
    const base = exampleExperiment(waiting(LONGEST.list - 1));
    const rows = many(3, (index) => ({ ...PLAIN_ROW, row: index + 2 }));
    const { experiment, faults } = takeRows(base, rows, outside());
    expect(experiment.marks).toHaveLength(LONGEST.list);
    expect(faults.map(({ row }) => row)).toEqual([3, 4]);
  });

  it('are looked at in a moment at every change', () => {
    const bench = benchWith(exampleExperiment(waiting(LONGEST.list - 40, { lengthM: 0.158 })));
    const start = cpuMs();
    for (let index = 0; index < 20; index += 1) bench.addMarkByHand(null);
    expect(bench.experiment.marks).toHaveLength(LONGEST.list - 20);
    expect((cpuMs() - start) / 20).toBeLessThan(60);
  });
});

describe('a large experiment', () => {
  const points = 120;
  const trace = {
    startS: 1.234_567_890_123,
    stepS: 0.05,
    toneDb: many(points, (index) => -41.234_567_890_123_4 - index / 7),
    roomDb: many(points, (index) => -61.234_567_890_123_4 - index / 7),
  };
  const flagged = (id: string): Mark =>
    exampleMark(id, { lengthM: 0.158, evidence: { ...EXAMPLE_EVIDENCE, trace } });

  it('has its bytes counted as its file has them', () => {
    const some = { ...exampleExperiment([flagged('a'), flagged('b')]), note: '“ü”\n😀' };
    const bytes = new TextEncoder().encode(JSON.stringify(some)).length;
    // A comma after each mark, the last one included.
    expect(recordBytes(some)).toBe(bytes + 1);
  });

  it(
    'takes 3000 flagged marks with their traces, and its file opens again',
    { timeout: 60_000 },
    async () => {
      const large = exampleExperiment(many(3000, (index) => flagged(`mark-${index}`)));
      const bench = benchWith(large);
      const json = experimentJson(bench.experiment);
      expect(new TextEncoder().encode(json).length).toBeLessThan(LARGEST_JSON_BYTES);
      const { content } = await readFile(new File([json], 'x.json'));
      expect(content).toEqual({ kind: 'experiment', experiment: bench.experiment });
    },
  );

  it(
    'refuses what would make its file too large to open, and still can be made smaller',
    { timeout: 60_000 },
    () => {
      const note = 'n'.repeat(LONGEST.markNote);
      const count = Math.floor(LARGEST_RECORD_BYTES / (LONGEST.markNote + 250));
      const bench = benchWith(
        exampleExperiment(many(count, (index) => exampleMark(`mark-${index}`, { note }))),
      );
      const room = LARGEST_RECORD_BYTES - recordBytes(bench.experiment);
      const more = many(Math.ceil(room / LONGEST.markNote) + 1, (index) =>
        exampleMark(`more-${index}`, { note }),
      );
      const add = (now: Experiment): Experiment => ({ ...now, marks: [...now.marks, ...more] });
      expect(bench.change('add table', add)).toBe(false);
      expect(told(bench)).toMatch(/would have 18\.\d MB; its file may have 18 MB. Begin another one/);
      expect(bench.experiment.marks).toHaveLength(count);
      bench.deleteMark('mark-0');
      expect(bench.experiment.deletedMarks).toHaveLength(1);
    },
  );

  it('names the rows of a table that would make it so', { timeout: 60_000 }, async () => {
    const rows = many(2500, (index) => ({
      ...PLAIN_ROW,
      row: index + 2,
      note: '"'.repeat(LONGEST.markNote),
    }));
    const { experiment, faults } = experimentFromRows('x', rows, outside());
    expect(experiment.marks.length + faults.length).toBe(2500);
    expect(faults.length).toBeGreaterThan(1000);
    expect(faults[0]?.message).toContain('more than 18 MB');
    expect(recordBytes(experiment)).toBeLessThanOrEqual(LARGEST_RECORD_BYTES);
    // Each quote is doubled in the table.
    expect(await rowsOf(marksCsv(experiment))).toHaveLength(experiment.marks.length);
  });
});
