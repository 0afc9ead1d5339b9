import { describe, expect, it } from 'vitest';
import { readFile } from '../../../src/intake/readFile.ts';
import { readPasted } from '../../../src/intake/readPasted.ts';
import { experimentFromRows } from '../../../src/intake/takeRows.ts';
import { LONGEST } from '../../../src/limits/longest.ts';
import { beginningOf, wellFormed } from '../../../src/limits/texts.ts';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { copyExperiment } from '../../../src/notebook/copyExperiment.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { beginHistory } from '../../../src/notebook/history.ts';
import { lessonFault, lessonHash, planOf, readLessonHash } from '../../../src/notebook/lessonLink.ts';
import type { LessonPlan } from '../../../src/notebook/lessonLink.ts';
import { newFork } from '../../../src/notebook/newExperiment.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { escapeMarkup } from '../../../src/report/markup.ts';
import { pasteFault } from '../../../src/ui/parts/longPaste.ts';
import { svgAddress } from '../../../src/ui/parts/svgAddress.ts';
import { exampleExperiment } from '../notebook/exampleExperiment.ts';
import { benchInTest, told } from '../session/benchInTest.ts';
import { expectEveryWay, outside, rowsOf } from './everyWay.ts';
import { boundaryExperiment } from './fields.ts';
import { lessonFaultWords } from '../../../src/words/lessonLink.ts';
import { tableFaultsWords } from '../../../src/words/tableFaults.ts';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { titleWords } from '../../../src/words/titles.ts';

const HALF = '\ud83d';
const base = boundaryExperiment();

describe('half of a surrogate pair', () => {
  it('becomes U+FFFD, and whole characters stay', () => {
    expect(wellFormed(`a${HALF}b😀\udc00`)).toBe('a\ufffdb😀\ufffd');
  });

  it('in a file’s names and notes becomes one on the way in, and all works', async () => {
    const half: Experiment = {
      ...base,
      title: `A${HALF}`,
      note: `${HALF}n`,
      places: base.places.map((place, index) => ({ ...place, name: `${HALF}${index}` })),
      marks: base.marks.map((mark) => ({ ...mark, note: HALF })),
    };
    // JSON writes it as an escape: "\ud83d".
    const { content, faults } = await readFile(new File([JSON.stringify(half)], 'x.json'));
    expect(faults).toEqual([]);
    if (content?.kind !== 'experiment') throw new Error('it is an experiment');
    expect(content.experiment.title).toBe('A\ufffd');
    await expectEveryWay(content.experiment);
  });

  it('that is typed or pasted becomes one, too', () => {
    const bench = benchInTest();
    bench.change('rename', (now) => ({ ...now, title: HALF, note: HALF }));
    bench.change('change place', (now) => ({
      ...now,
      places: now.places.map((place) => ({ ...place, name: `x${HALF}` })),
    }));
    expect(bench.experiment).toMatchObject({
      title: '\ufffd',
      note: '\ufffd',
      places: [{ name: 'x\ufffd' }],
    });
    const pasted = readPasted(`fork_hz;ends;length_cm;place\n512;closed;15.8;${HALF}`, {
      forkHz: 512,
      ends: 'closed',
    });
    expect(pasted.content).toMatchObject({ rows: [{ place: '\ufffd' }] });
  });

  it('in a lesson’s task becomes one', async () => {
    const lesson = { task: HALF, hideExpected: false, hideTheory: false, hideTruth: false };
    expect(await readLessonHash(await lessonHash(planOf(base, lesson)))).toMatchObject({
      plan: { lesson: { task: '\ufffd' } },
    });
  });

  it('breaks no picture, wherever it comes from', () => {
    expect(escapeMarkup(`${HALF}<\u0001\uffff`)).toBe('\ufffd&lt;\ufffd\ufffd');
    expect(svgAddress(`<svg>${HALF}</svg>`)).toBe('data:image/svg+xml,%3Csvg%3E%EF%BF%BD%3C%2Fsvg%3E');
  });
});

describe('a text that is too long', () => {
  const long = (length: number): string => 'ü'.repeat(length);

  it('is a fault with its length, the most, and what to do', () => {
    const table = (length: number): string =>
      `fork_hz,ends,length_cm,note\n512,closed,15.8,${long(length)}\n`;
    const read = readMarksTable(table(10_001));
    expect(read.ok ? '' : tableFaultsWords(read.faults)).toBe(
      'row 2, column note: The note has 10001 characters; 10000 is the most. Shorten it.',
    );
    expect(readMarksTable(table(10_000)).ok).toBe(true);
  });

  it.each([
    ['place', LONGEST.name],
    ['note', LONGEST.markNote],
    ['group', LONGEST.name],
  ])(
    'is a fault of its row in the column %s of a table, on the page as on the command line',
    async (column, most) => {
      const table = (length: number): string =>
        `fork_hz,ends,length_cm,${column}\n512,closed,15.8,${long(length)}\n`;
      const { faults } = await readFile(new File([table(most + 1)], 'x.csv'));
      expect(faults).toMatchObject([{ row: 2, column }]);
      expect(solveTable(table(most + 1))).toHaveProperty('error');
      const taken = experimentFromRows('x', await rowsOf(table(most)), outside());
      expect(taken.faults).toEqual([]);
      expect(readExperiment(JSON.parse(experimentJson(taken.experiment))).kind).toBe('experiment');
      expect(solveTable(table(most))).not.toHaveProperty('error');
    },
  );

  it('comes through every way where it is as long as may be', async () => {
    await expectEveryWay({
      ...base,
      title: long(LONGEST.title),
      note: long(LONGEST.note),
      // Of one name: the table tells them apart by a number.
      places: base.places.map((place) => ({ ...place, name: long(LONGEST.name) })),
      marks: base.marks.map((mark) => ({ ...mark, note: long(LONGEST.markNote) })),
    });
  });

  it('is not kept, and what was there stays', () => {
    const bench = benchInTest();
    expect(bench.change('write note', (now) => ({ ...now, note: long(LONGEST.note + 1) }))).toBe(false);
    expect(bench.experiment.note).toBe('');
    expect(told(bench)).toContain(`at most ${LONGEST.note} characters`);
  });

  it('does not come about where an experiment is copied, or taken from a file', () => {
    const source = { ...exampleExperiment(), title: `${long(LONGEST.title - 1)}x` };
    const copy = copyExperiment(beginHistory(source), 'copy').present;
    expect(copy.title).toBe(source.title);
    expect(titleWords(copy)).toMatch(/üx \(copy\)$/);
    expect(readExperiment(copy).kind).toBe('experiment');
    expect(experimentFromRows(long(600), [], outside()).experiment.title).toHaveLength(LONGEST.title);
    // Never half of a character.
    expect(beginningOf('a😀', 2)).toBe('a');
  });

  it('of a lesson goes into the link as long as it fits, in any script', async () => {
    const lesson = (task: string) => ({ task, hideExpected: false, hideTheory: false, hideTruth: false });
    const said = async (faulty: LessonPlan): Promise<string> => {
      const fault = lessonFault(faulty, await lessonHash(faulty));
      return fault === null ? '' : lessonFaultWords(fault);
    };
    const plan = planOf(base, lesson('\u4e16'.repeat(LONGEST.task)));
    expect(await said(plan)).toBe('');
    expect(await readLessonHash(await lessonHash(plan))).toMatchObject({ plan: { lesson: plan.lesson } });
    expect(await said(planOf(base, lesson('x'.repeat(LONGEST.task + 1))))).toContain('2000 is the most');
    const forks = Array.from({ length: 4000 }, (_, index) =>
      newFork(`fork-${index}`, 300 + 150 * Math.sin(index)),
    );
    expect(await said({ ...plan, forks })).toContain('4000 forks are too many');
  });

  it('is not cut by a paste without a word', () => {
    const field = { maxLength: 10, value: '12345678', selectionStart: 2, selectionEnd: 4 };
    expect(pasteFault(field, 'abcd')).toBeNull();
    expect(pasteFault(field, 'abcde')).toBe(
      'Not pasted: the field would have 11 characters, and can have 10. Paste a shorter text.',
    );
    expect(pasteFault({ ...field, maxLength: -1 }, 'x'.repeat(1e6))).toBeNull();
    expect(pasteFault(field, 'a\r\nb\r\n')).toBeNull();
  });
});
