import { describe, expect, it } from 'vitest';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
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
    expect(bench.experiment.title).toBe('Experiment');
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

  it('that another tab shows is neither brought back nor erased behind its back, and this is said', async () => {
    const { tabs, first, second, id } = await twoTabs();
    await first.bench.experiments.putAway(id);
    await tabs.settle();
    for (const act of ['bringBack', 'erase'] as const) {
      first.bench.dismissNotice();
      await first.bench.experiments[act](id);
      expect(first.bench.notice?.message).toMatch(/open in another tab/);
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
