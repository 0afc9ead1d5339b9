import { describe, expect, it } from 'vitest';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { readKept } from '../../../src/notebook/readKept.ts';
import { experimentList } from '../../../src/session/experiment/experimentList.ts';
import { mendedNote } from '../../../src/words/mended.ts';
import { firstFaultWords, recordFaultWords } from '../../../src/words/recordFaults.ts';
import { RECORDS_OF_EVERY_VERSION } from '../notebook/recordsOfEveryVersion.ts';
import { MemoryStore } from '../notebook/memoryStore.ts';
import { benchInTest } from '../session/benchInTest.ts';
import { expectEveryWay } from './everyWay.ts';

type Fields = Record<string, unknown>;

/** The ends of what a record could hold before there was one table: lowest, highest, and what it became in words. */
const BEFORE: readonly [
  path: readonly (string | number)[],
  lowest: number,
  highest: number,
  words: RegExp,
][] = [
  [['tube', 'diameterM'], 0.001, 1, /inside diameter/],
  [['tube', 'travelM'], 0.01, 20, /longest column/],
  [['rule', 'readingStandardUncertaintyM'], 1e-6, 0.5, /reading uncertainty/],
  [['rule', 'zeroOffsetM'], -1, 1, /length/],
  [['forks', 0, 'standardUncertaintyHz'], 1e-6, 1000, /uncertainty/],
  [['forks', 0, 'measuredHz'], 20, 20_000, /measured frequency/],
  [['forks', 0, 'measuredStandardUncertaintyHz'], 0, 1000, /measured frequency/],
  [['places', 0, 'temperatureC'], -60, 100, /air temperature/],
  [['places', 0, 'temperatureStandardUncertaintyC'], 0, 50, /uncertainty of the temperature/],
  [['places', 0, 'humidityPct'], 0, 100, /humidity/],
  [['places', 0, 'pressurePa'], 10_000, 200_000, /pressure/],
  [['marks', 0, 'lengthM'], 1e-4, 20, /mark 1: length/],
  [['marks', 0, 'otherLengthM'], 1e-4, 20, /mark 1: length/],
  [['marks', 0, 'order'], 1, 100, /order/],
  [['deletedMarks', 0, 'lengthM'], 1e-4, 20, /deleted mark 1: length/],
  [['marks', 0, 'evidence', 'frequencyHz'], 20, 20_000, /heard frequency/],
  [['marks', 0, 'evidence', 'frequencyStandardUncertaintyHz'], 0, 1000, /heard frequency/],
];

function changed(record: unknown, path: readonly (string | number)[], put: unknown): Fields {
  const copy = structuredClone(record) as Fields;
  let at = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  at[path.at(-1) ?? ''] = put;
  return copy;
}

describe.each(RECORDS_OF_EVERY_VERSION)('a record of version $schemaVersion', (record) => {
  it.each(BEFORE)(
    'opens with %j at both ends of what it could hold, and nothing that it said is lost',
    async (path, lowest, highest, words) => {
      for (const value of [lowest, highest]) {
        const old = changed(record, path, value);
        const kept = readKept(old, mendedNote);
        expect(kept.kind === 'faults' ? kept.faults : []).toEqual([]);
        if (kept.kind === 'faults') continue;
        const { experiment } = kept;
        expect(experiment.note).toContain('Window open.');
        expect(experiment.marks).toHaveLength(2);
        if (readExperiment(old).kind === 'faults') {
          expect(experiment.note).toMatch(words);
          // A zero offset stays; the readings that it leaves no column are what is told.
          const told = path.at(-1) === 'zeroOffsetM' ? '0.158' : String(value).replace('-', '−');
          expect(experiment.note).toContain(told);
        } else expect(experiment.note).toBe('Window open.');
        await expectEveryWay(experiment);
      }
    },
  );

  it('with a mark that its zero offset leaves no column opens from the store, the length in its note', async () => {
    const old = changed(record, ['rule', 'zeroOffsetM'], 0.2) as { id: string };
    const reading = readExperiment(old);
    expect(reading.kind === 'faults' ? reading.faults.map(recordFaultWords) : []).toEqual([
      expect.stringContaining('marks[0].lengthM must be from 0.2001 to 10'),
    ]);
    const bench = benchInTest({ openStore: () => Promise.resolve(new MemoryStore([old])) });
    await bench.restore();
    expect(bench.experiment.id).toBe(old.id);
    expect(bench.experiment.marks.map(({ id, lengthM }) => [id, lengthM])).toEqual([
      ['a', null],
      ['b', null],
    ]);
    expect(bench.experiment.note).toBe(
      'Outside of what this page works with: mark 1: length 0.158 m (left out).\nWindow open.',
    );
  });

  it('stays in the list with its fault where a fork with marks is no fork of the bench', () => {
    const old = changed(record, ['forks', 0, 'nominalHz'], 5000);
    const [entry] = experimentList(
      [{ id: 'kept', experiment: old, history: null, revision: 1, deletedAt: null }],
      mendedNote,
    );
    expect(firstFaultWords(entry?.fault ? [entry.fault] : [])).toBe(
      'forks[0].nominalHz must be a number from 64 to 4096, but it is 5000.',
    );
    expect(entry?.record).toBe(old);
  });

  it('is not mended where its note leaves no room for what was left out', () => {
    const full = changed(changed(record, ['note'], 'n'.repeat(100_000)), ['places', 0, 'pressurePa'], 2e5);
    expect(readKept(full, mendedNote).kind).toBe('faults');
  });
});
