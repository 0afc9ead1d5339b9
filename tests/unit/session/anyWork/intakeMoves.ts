import fc from 'fast-check';
import { expect } from 'vitest';
import { readFile } from '../../../../src/intake/readFile.ts';
import { readPasted } from '../../../../src/intake/readPasted.ts';
import { experimentFromRows } from '../../../../src/intake/takeRows.ts';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { underLesson } from '../../../../src/notebook/keptBack.ts';
import { planOf } from '../../../../src/notebook/lessonLink.ts';
import { openLesson as arrive } from '../../../../src/session/experiment/lessonArrival.ts';
import { experimentJson } from '../../../../src/report/experimentJson.ts';
import { anyExperiment } from '../../../support/anyExperiment.ts';
import type { BenchTabs, Tab } from './benchTabs.ts';
import { EXAMPLE_TIME } from '../../notebook/exampleExperiment.ts';
import { picked } from './edit.ts';
import { copied, expectFresh, isTaken } from './experimentMoves.ts';
import { lineOf, stepped } from './line.ts';
import type { Line } from './line.ts';
import type { Move } from './move.ts';
import { expectSame } from './perform.ts';
import { anyRows, defaultsOf, expectRows, tableOf } from './sessionEdits.ts';

const saveFile: Move = {
  words: 'save all as JSON',
  begin: (tabs, tab) => {
    tabs.files.push(experimentJson(tab.bench.experiment));
    return { done: Promise.resolve(), after: () => undefined };
  },
};

async function open(tab: Tab, text: string): Promise<void> {
  const { content, faults } = await readFile(new File([text], 'x.json'));
  expect(faults).toEqual([]);
  if (content?.kind !== 'experiment') throw new Error('an experiment was in the file');
  await tab.bench.experiments.open(content.experiment, 'open file');
}

/** After a file was opened: a step of the experiment that is there, else one of its own. */
function expectOpened(tabs: BenchTabs, tab: Tab, was: Line, isBusy: boolean, inFile: Experiment): void {
  const experiment = underLesson(inFile, was.present.lesson);
  const { history } = tab.bench;
  const { id, changedAt } = history.present;
  const there = tabs.kept.get(experiment.id);
  if (isBusy) {
    // Another tab works on it: this one goes on with a copy.
    expect(id).not.toBe(experiment.id);
    tab.line = copied({ past: [], present: experiment, future: [] }, id);
  } else if (experiment.id === was.present.id)
    tab.line = stepped(was, 'open file', { ...experiment, changedAt });
  else if (there === undefined) {
    expectSame(history.present, experiment, 'the file’s experiment');
    tab.line = lineOf(history);
  } else tab.line = stepped(there.line, 'open file', { ...experiment, changedAt });
}

const openText = (words: string, textOf: (tabs: BenchTabs) => string | undefined): Move => ({
  words,
  begin: (tabs, tab) => {
    const text = textOf(tabs);
    if (text === undefined) return null;
    const experiment = JSON.parse(text) as Experiment;
    const isInHere = experiment.id === tab.line.present.id && tab.bench.keeping.access !== 'elsewhere';
    // What a tab holds apart goes on there, whoever has the experiment.
    const isBusy = !isInHere && isTaken(tabs, tab, experiment.id);
    // When its step comes among others made at the same time, nobody can say.
    if (tabs.notebook.isSlow && experiment.id === tab.line.present.id) return null;
    return {
      done: open(tab, text),
      isInHere,
      after: (was, isAsMade) => {
        // What was done to it before its step came stands among its steps.
        if (isAsMade) expectOpened(tabs, tab, was, isBusy, experiment);
        else tab.line = lineOf(tab.bench.history);
      },
    };
  },
});

const openTable = (rows: Parameters<typeof tableOf>[0]): Move => ({
  words: `open a table of ${rows.length} as an experiment`,
  begin: (tabs, tab) => {
    const { content } = readPasted(tableOf(rows), defaultsOf(tab));
    if (content?.kind !== 'table') throw new Error('a table was pasted');
    const outside = { newId: () => tab.bench.newId(), now: tabs.now() };
    const taken = experimentFromRows('Pasted text', content.rows, outside);
    expect(taken.faults).toEqual([]);
    return {
      done: tab.bench.experiments.open(taken.experiment, 'open table'),
      after: (was, isAsMade) => {
        if (!isAsMade) return;
        const found = expectFresh(tabs, tab, was);
        expectRows(found.marks, rows, found);
      },
    };
  },
});

const openLesson = (task: string, hides: boolean): Move => ({
  words: `open this apparatus’s lesson link, task ${JSON.stringify(task)}`,
  begin: (tabs, tab) => {
    const { present } = tab.line;
    const lesson = { task, hideExpected: hides, hideTheory: !hides, hideTruth: hides };
    const plan = planOf(tab.bench.experiment, lesson);
    return {
      done: arrive(tab.bench, { plan, unheardHz: [] }, EXAMPLE_TIME),
      after: (was, isAsMade) => {
        if (!isAsMade) return;
        const found = expectFresh(tabs, tab, was);
        const pitches = ({ forks }: Experiment): number[] => forks.map(({ nominalHz }) => nominalHz);
        expect(pitches(found)).toEqual(pitches(present));
        expect(found).toMatchObject({ tube: present.tube, lesson, marks: [] });
        expect(found.present.ends).toBe(present.present.ends);
      },
    };
  },
});

export const anyIntakeMove: fc.Arbitrary<Move> = fc.oneof(
  { weight: 2, arbitrary: fc.constant(saveFile) },
  {
    weight: 3,
    arbitrary: fc
      .nat({ max: 9 })
      .map((at) => openText(`open saved file [${at}]`, ({ files }) => picked(files, at))),
  },
  {
    weight: 1,
    arbitrary: anyExperiment.map((experiment) =>
      openText(`open a foreign file of ${experiment.marks.length} marks`, () => experimentJson(experiment)),
    ),
  },
  { weight: 1, arbitrary: anyRows.map(openTable) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('', 'Find the speed.', '“ä” 音'), fc.boolean())
      .map(([task, hides]) => openLesson(task, hides)),
  },
);
