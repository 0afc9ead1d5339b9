import { describe, expect, it } from 'vitest';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { told } from './benchInTest.ts';
import { BenchTabs } from './anyWork/benchTabs.ts';
import type { Tab } from './anyWork/benchTabs.ts';

const lengths = ({ bench }: Tab): (number | null)[] => bench.experiment.marks.map(({ lengthM }) => lengthM);

/** A tab with one mark in its experiment, and a second tab that follows it. */
async function twoTabs(): Promise<{ tabs: BenchTabs; first: Tab; second: Tab; id: string }> {
  const tabs = new BenchTabs(true);
  const first = await tabs.open(0);
  first.bench.addMarkByHand(0.16);
  await tabs.settle();
  const second = await tabs.open(1);
  expect(second.bench.keeping.access).toBe('elsewhere');
  return { tabs, first, second, id: first.bench.experiment.id };
}

async function record(tabs: BenchTabs, id: string) {
  return (await tabs.notebook.records()).get(id);
}

describe('a deleted experiment', () => {
  it('is brought back by opening its file, which becomes its newest step', async () => {
    const tabs = new BenchTabs(true);
    const { bench } = await tabs.open(0);
    bench.addMarkByHand(0.16);
    const { id } = bench.experiment;
    const reading = readExperiment(JSON.parse(experimentJson(bench.experiment)));
    if (reading.kind === 'faults') throw new Error('the bench wrote it');
    await bench.experiments.putAway(id);
    await bench.experiments.open({ ...reading.experiment, title: 'From the file' }, 'open file');
    await tabs.settle();
    expect(bench.experiment).toMatchObject({ id, title: 'From the file' });
    expect(bench.saveState).toEqual({ kind: 'saved' });
    expect(await record(tabs, id)).toMatchObject({ deletedAt: null, experiment: { title: 'From the file' } });
    bench.undo();
    expect(bench.experiment.title).toBe('');
  });

  it('is brought back by what is done to it in the tab that still shows it', async () => {
    const { tabs, first, second, id } = await twoTabs();
    await first.bench.experiments.putAway(id);
    await tabs.settle();
    expect(second.bench.keeping.access).toBe('own');
    second.bench.addMarkByHand(0.5);
    await tabs.settle();
    expect(second.bench.saveState).toEqual({ kind: 'saved' });
    expect(await record(tabs, id)).toMatchObject({ deletedAt: null });
    expect(lengths(second)).toEqual([0.16, 0.5]);
  });

  it('is brought back from the list also where it is open, and goes on being saved', async () => {
    const { tabs, first, second, id } = await twoTabs();
    await first.bench.experiments.putAway(id);
    await tabs.settle();
    await second.bench.experiments.bringBack(id);
    second.bench.addMarkByHand(0.5);
    await tabs.settle();
    expect(second.bench.keeping.access).toBe('own');
    expect(second.bench.saveState).toEqual({ kind: 'saved' });
    expect(await record(tabs, id)).toMatchObject({ deletedAt: null });
  });

  it('is brought back from the list where it is open apart from the notebook, as it was saved', async () => {
    const { tabs, first, second, id } = await twoTabs();
    tabs.notebook.mood = 'full';
    first.bench.addMarkByHand(0.3);
    await tabs.settle();
    await second.bench.keeping.takeOver();
    expect(first.bench.keeping.access).toBe('apart');
    tabs.notebook.mood = 'well';
    await second.bench.experiments.putAway(id);
    await tabs.settle();
    expect(await record(tabs, id)).not.toMatchObject({ deletedAt: null });
    await first.bench.experiments.bringBack(id);
    await tabs.settle();
    expect(await record(tabs, id)).toMatchObject({ deletedAt: null });
    expect(lengths(first)).toEqual([0.16, 0.3]);
  });

  it('that another tab shows is neither brought back nor erased behind its back, and this is said', async () => {
    const { tabs, first, second, id } = await twoTabs();
    await first.bench.experiments.putAway(id);
    await tabs.settle();
    for (const act of ['bringBack', 'erase'] as const) {
      first.bench.dismissNotice();
      await first.bench.experiments[act](id);
      expect(told(first.bench)).toMatch(/open in another tab/);
    }
    expect(await record(tabs, id)).toBeDefined();
    expect(second.bench.saveState).toEqual({ kind: 'saved' });
  });

  it('that is erased where it is open gives way to another: nothing is called saved that is gone', async () => {
    const { tabs, first, second, id } = await twoTabs();
    await first.bench.experiments.putAway(id);
    await tabs.settle();
    await second.bench.experiments.erase(id);
    await tabs.settle();
    expect(await record(tabs, id)).toBeUndefined();
    expect(second.bench.experiment.id).not.toBe(id);
  });
});

describe('taking an experiment over', () => {
  it('also succeeds while the other tab’s last save is still followed', async () => {
    const { tabs, first, second } = await twoTabs();
    await first.bench.hearing.start(first.ears);
    // Its trace is amended when the listening ends, as it does on the hand-over.
    first.ears.pass({ slide: 'longer', sounding: 1 });
    await tabs.settle();
    await second.bench.keeping.takeOver();
    await tabs.settle();
    expect(second.bench.keeping.access).toBe('own');
    expect(first.bench.keeping.access).toBe('elsewhere');
  });
});

describe('before it is clear whose the experiment is', () => {
  /** The first tab opens what the second one works on; `meanwhile` is done before it is told so. */
  async function openTaken(meanwhile: (first: Tab) => void) {
    const tabs = new BenchTabs(true);
    const first = await tabs.open(0);
    first.bench.addMarkByHand(0.16);
    await tabs.settle();
    const { id } = first.bench.experiment;
    await first.bench.experiments.openNew(true);
    const second = await tabs.open(1);
    await second.bench.experiments.openStored(id);
    let answer = (): void => undefined;
    tabs.locks.answersFrom = new Promise((resolve) => (answer = resolve));
    const opening = first.bench.experiments.openStored(id);
    await tabs.turn();
    expect(first.bench.experiment.id).toBe(id);
    meanwhile(first);
    answer();
    await opening;
    await tabs.settle();
    second.bench.addMarkByHand(0.6);
    await tabs.settle();
    return { tabs, first, second, id };
  }

  it('nothing is written over another tab’s work; what was typed stays, and is said to be in this tab only', async () => {
    const { tabs, first, second, id } = await openTaken(({ bench }) => bench.addMarkByHand(0.5));
    expect(second.bench.keeping.access).toBe('own');
    expect(second.bench.saveState).toEqual({ kind: 'saved' });
    expect(lengths(second)).toEqual([0.16, 0.6]);
    expect(lengths(first)).toEqual([0.16, 0.5]);
    expect(first.bench.keeping.access).toBe('apart');
    expect(first.bench.saveState).toMatchObject({ kind: 'refused', fault: 'elsewhere' });
    expect(await record(tabs, id)).toMatchObject({ experiment: { marks: [{}, { lengthM: 0.6 }] } });
  });

  /** A stored experiment is opened, and something is typed into it before it is known whose it is. */
  async function openUnanswered() {
    const tabs = new BenchTabs(true);
    const { bench } = await tabs.open(0);
    bench.addMarkByHand(0.16);
    const { id } = bench.experiment;
    await bench.experiments.openNew(true);
    let answer = (): void => undefined;
    tabs.locks.answersFrom = new Promise((resolve) => (answer = resolve));
    const opening = bench.experiments.openStored(id);
    await tabs.turn();
    bench.addMarkByHand(0.5);
    return { tabs, bench, id, opening, answer };
  }

  it('what was typed is saved where nobody else has it', async () => {
    const { tabs, bench, id, opening, answer } = await openUnanswered();
    expect(bench.saveState).toEqual({ kind: 'saving' });
    answer();
    await opening;
    await tabs.settle();
    expect(bench.saveState).toEqual({ kind: 'saved' });
    expect(await record(tabs, id)).toMatchObject({ experiment: { marks: [{}, { lengthM: 0.5 }] } });
  });

  it('another experiment can be opened at once: what was typed goes to its own', async () => {
    const { tabs, bench, id, opening, answer } = await openUnanswered();
    const next = bench.experiments.openNew(false);
    await tabs.turn();
    answer();
    await Promise.all([opening, next]);
    await tabs.settle();
    expect(bench.experiment.id).not.toBe(id);
    expect(await record(tabs, id)).toMatchObject({ experiment: { marks: [{}, { lengthM: 0.5 }] } });
  });
});

describe('listening', () => {
  it('ends where an experiment is opened that another tab works on: no flag is told that makes no mark', async () => {
    const { tabs, first, second, id } = await twoTabs();
    await second.bench.experiments.openNew(false);
    await second.bench.hearing.start(second.ears);
    await second.bench.experiments.openStored(id);
    await tabs.settle();
    expect(second.bench.keeping.access).toBe('elsewhere');
    expect(second.bench.hearing.isListening).toBe(false);
    expect(first.bench.keeping.access).toBe('own');
  });

  it('that goes on over the opening of another experiment writes nothing into that one by itself', async () => {
    const tabs = new BenchTabs(true);
    const { bench, ears } = await tabs.open(0);
    bench.addMarkByHand(0.16);
    const { id } = bench.experiment;
    await bench.experiments.openNew(false);
    bench.change('change fork', (experiment) => ({
      ...experiment,
      forks: experiment.forks.map((fork) => ({ ...fork, nominalHz: 480 })),
    }));
    await bench.hearing.start(ears);
    ears.pass({ slide: 'longer', sounding: 1 });
    await tabs.settle();
    const before = await record(tabs, id);
    await bench.experiments.openStored(id);
    await tabs.settle();
    expect(bench.experiment.id).toBe(id);
    expect((await record(tabs, id))?.revision).toBe(before?.revision);
  });
});
