import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/intake/readFile.ts';
import { takeRows } from '../../../src/intake/takeRows.ts';
import { columnM, hasColumn, readingLimit, readingOfColumnM } from '../../../src/marks/columnOfMark.ts';
import { readingFault } from '../../../src/notebook/columnFault.ts';
import { recordFaultWords } from '../../../src/words/recordFaults.ts';
import { readingFaultWords } from '../../../src/words/columnFaults.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { RecentLevels } from '../../../src/session/hearing/recentLevels.ts';
import { FlagMarking } from '../../../src/session/hearing/flagMarking.ts';
import { EXAMPLE_TIME, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest, told } from '../session/benchInTest.ts';
import { outside, rowsOf } from './everyWay.ts';

const withOffset = (experiment: Experiment, zeroOffsetM: number): Experiment => ({
  ...experiment,
  rule: { ...experiment.rule, zeroOffsetM },
});
const two = exampleExperiment([exampleMark('a', { lengthM: 0.492 }), exampleMark('b', { lengthM: 0.158 })]);

describe('the column of a reading', () => {
  it('is the reading less the zero offset, without the noise of binary fractions', () => {
    expect(columnM(0.2001, 0.2)).toBe(0.0001);
    expect(columnM(0.158, 0)).toBe(0.158);
    expect(readingOfColumnM(0.154, 0.004)).toBe(0.158);
  });

  it('is a length like any other', () => {
    expect(hasColumn(0.2001, 0.2)).toBe(true);
    expect(hasColumn(0.20009, 0.2)).toBe(false);
    expect(hasColumn(0.158, 0.2)).toBe(false);
    expect(hasColumn(9.6, -0.5)).toBe(false);
    expect(readingLimit(0.2)).toEqual({ lowest: 0.2001, highest: 10 });
    expect(readingLimit(-0.5)).toEqual({ lowest: 0.0001, highest: 9.5 });
  });
});

describe('a zero offset that leaves a mark no column', () => {
  it('is refused, with the mark’s number, its value and what to do', () => {
    const bench = benchInTest();
    bench.addMarkByHand(0.492);
    bench.addMarkByHand(0.158);
    expect(bench.change('change rule', (now) => withOffset(now, 0.2))).toBe(false);
    expect(bench.experiment.rule.zeroOffsetM).toBe(0);
    expect(told(bench)).toBe(
      'With the zero offset of 20 cm mark 2 at 15.8 cm would be a column of −4.2 cm: readings must be 20.01 cm to 1000 cm. Correct the offset, or correct the mark’s length.',
    );
    expect(bench.change('change rule', (now) => withOffset(now, 0.1579))).toBe(true);
    expect(marksCsv(bench.experiment).trim().split('\r\n')).toHaveLength(3);
  });

  it('is refused for a deleted mark, too: it may come back', () => {
    const bench = benchInTest();
    bench.addMarkByHand(0.158);
    const [mark] = bench.experiment.marks;
    bench.deleteMark(mark?.id ?? '');
    expect(bench.change('change rule', (now) => withOffset(now, 0.2))).toBe(false);
    expect(told(bench)).toContain('the deleted mark at 15.8 cm would be a column of −4.2 cm');
    expect(told(bench)).toContain('bring that mark back');
  });
});

describe('a reading that leaves no column', () => {
  it('is refused where it is typed', () => {
    const fault = readingFault(0.158, 0.2);
    expect(fault === null ? null : readingFaultWords(fault)).toBe(
      'With the zero offset of 20 cm a reading of 15.8 cm would be a column of −4.2 cm: readings must be 20.01 cm to 1000 cm. Correct it, or the zero offset under Apparatus.',
    );
    expect(readingFault(0.2001, 0.2)).toBeNull();
    const bench = benchInTest();
    bench.change('change rule', (now) => withOffset(now, 0.2));
    bench.addMarkByHand(0.158);
    expect(bench.experiment.marks).toEqual([]);
    expect(told(bench)).toContain('mark 1 at 15.8 cm');
    bench.addMarkByHand(0.3, 0.199);
    expect(bench.experiment.marks).toEqual([]);
  });

  it('is a fault of the record, and its mark keeps its place without a length in the good part', async () => {
    const bad = withOffset(two, 0.2);
    const reading = readExperiment(JSON.parse(experimentJson(bad)));
    expect(reading.kind === 'faults' ? reading.faults.map(recordFaultWords) : []).toEqual([
      'marks[1].lengthM must be from 0.2001 to 10, so that the zero offset of 0.2 leaves a column, but it is 0.158.',
    ]);
    const { content, faults } = await readFile(new File([experimentJson(bad)], 'x.json'));
    expect(faults).toHaveLength(1);
    if (content?.kind !== 'experiment') throw new Error('there is a good part');
    expect(content.experiment.marks.map(({ lengthM }) => lengthM)).toEqual([0.492, null]);
    expect(content.experiment.note).toContain('mark 2: length 0.158 m (left out)');
  });
});

describe('a table that comes into an experiment with a zero offset', () => {
  it('loses no row: what the rule shows no reading for is a fault with its row', async () => {
    const rows = await rowsOf(
      'fork_hz,ends,length_cm,other_length_cm\n512,closed,30,\n512,closed,15.8,\n512,closed,40,15\n',
    );
    const base = withOffset(exampleExperiment([exampleMark('a', { lengthM: 0.3 })]), -0.2);
    const { experiment, faults } = takeRows(base, rows, outside());
    expect(experiment.marks.map(({ lengthM }) => lengthM)).toEqual([0.3, 0.1]);
    expect(faults.map(({ row, column }) => [row, column])).toEqual([
      [3, 'length_cm'],
      [4, 'other_length_cm'],
    ]);
    expect(faults[0]?.message).toContain(
      'zero offset of −20 cm a column of 15.8 cm would be read at −4.2 cm',
    );
    expect(readExperiment(experiment).kind).toBe('experiment');
  });
});

describe('columns below a centimetre', () => {
  it('are written with their unit, so that the table is read again', async () => {
    const short = withOffset(
      exampleExperiment([exampleMark('a', { lengthM: 0.155, otherLengthM: 0.2 })]),
      0.15,
    );
    const csv = marksCsv(short);
    expect(csv).toContain(',0.5 cm,');
    expect((await rowsOf(csv))[0]).toMatchObject({ lengthM: 0.005, otherLengthM: 0.05 });
  });

  it('and air drier than one per cent likewise', async () => {
    const dry: Experiment = {
      ...two,
      places: two.places.map((place) => ({ ...place, temperatureC: 20, humidityPct: 0.5 })),
    };
    expect((await rowsOf(marksCsv(dry)))[0]).toMatchObject({ humidityPct: 0.5 });
  });
});

describe('a mark of a recording', () => {
  const marked = (zeroOffsetM: number): Experiment => {
    let experiment = withOffset(exampleExperiment(), zeroOffsetM);
    const marking = new FlagMarking('recording', new RecentLevels(), {
      now: () => EXAMPLE_TIME,
      newId: () => 'new',
      experiment: () => experiment,
      change: (_step, make) => {
        experiment = make(experiment);
        return true;
      },
      amend: () => undefined,
      onMark: () => undefined,
      doubts: () => [],
      reasonOf: () => '',
      tell: () => undefined,
    });
    marking.takeRecorded({
      resonance: null,
      centre: null,
      cue: { timeS: 2, label: '512 Hz 15.8 cm', markId: null },
    });
    return experiment;
  };

  it('has the length that its label says', () => {
    expect(marked(0).marks[0]).toMatchObject({ lengthM: 0.158 });
  });

  it('waits for it where this rule’s zero offset leaves no column of it; the label stays in its note', () => {
    expect(marked(0.2).marks[0]).toMatchObject({ lengthM: null, note: '512 Hz 15.8 cm' });
    expect(readExperiment(marked(0.2)).kind).toBe('experiment');
  });
});
