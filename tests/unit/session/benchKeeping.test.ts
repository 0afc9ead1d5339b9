import { describe, expect, it } from 'vitest';
import type { TabHandlers } from '../../../src/notebook/tabHold.ts';
import type { BenchHold, BenchStore, KeepingOutside } from '../../../src/session/benchKeeping.ts';
import type { BenchSession } from '../../../src/session/benchSession.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { MemoryStore, freeHold } from '../notebook/memoryStore.ts';
import { benchInTest } from './benchInTest.ts';

// Of all sessions together: several work on one store.
let ids = 0;
const newId = (): string => `new-${(ids += 1)}`;

async function begin(store: BenchStore, outside: Partial<KeepingOutside> = {}): Promise<BenchSession> {
  const bench = benchInTest({ openStore: () => Promise.resolve(store), newId, ...outside });
  await bench.restore();
  return bench;
}

const lengths = (bench: BenchSession): (number | null)[] =>
  bench.experiment.marks.map((mark) => mark.lengthM);

describe('steps over a reload', () => {
  it('are undone and redone as before', async () => {
    const store = new MemoryStore();
    const before = await begin(store);
    for (const lengthM of [0.1, 0.2, 0.3]) before.addMarkByHand(lengthM);
    before.undo();
    await before.keeping.idle();
    const after = await begin(store);
    expect(lengths(after)).toEqual([0.1, 0.2]);
    after.redo();
    expect(lengths(after)).toEqual([0.1, 0.2, 0.3]);
    after.undo();
    after.undo();
    expect(lengths(after)).toEqual([0.1]);
    expect(after.undoName).toBe('add mark');
  });
});

describe('several experiments', () => {
  it('stay apart: new, copy, open again, delete, bring back', async () => {
    const store = new MemoryStore();
    const bench = await begin(store);
    bench.addMarkByHand(0.1);
    const { id } = bench.experiment;
    await bench.experiments.openNew(true);
    // A list of equal titles would tell nothing apart.
    expect(bench.experiment.title).toBe('Experiment 2');
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    expect(store.experiment(id)?.marks).toHaveLength(1);
    await bench.experiments.openStored(id);
    expect(lengths(bench)).toEqual([0.1]);
    await bench.experiments.openCopy();
    bench.addMarkByHand(0.3);
    await bench.keeping.idle();
    expect(bench.experiment.title).toBe('Experiment (copy)');
    expect(store.experiment(id)?.marks).toHaveLength(1);
    expect(await store.list()).toHaveLength(3);
    bench.undo();
    expect(lengths(bench)).toEqual([0.1]);

    const copy = bench.experiment.id;
    await bench.experiments.putAway(copy);
    expect(bench.experiment.id).not.toBe(copy);
    await bench.experiments.bringBack(copy);
    await bench.experiments.openStored(copy);
    expect(lengths(bench)).toEqual([0.1]);
  });

  it('what is done while a copy waits for its lock belongs to the copy and is kept', async () => {
    const store = new MemoryStore();
    const waiting: (() => void)[] = [];
    let isSlow = false;
    const hold = (): Promise<boolean> =>
      isSlow ? new Promise((resolve) => waiting.push(() => resolve(true))) : Promise.resolve(true);
    const bench = await begin(store, { createHold: () => ({ ...freeHold, hold }) });
    bench.addMarkByHand(0.1);
    isSlow = true;
    const copying = bench.experiments.openCopy();
    await new Promise((resolve) => setTimeout(resolve));
    bench.addMarkByHand(0.2);
    waiting.forEach((give) => give());
    await copying;
    await bench.keeping.idle();
    expect(lengths(bench)).toEqual([0.1, 0.2]);
    expect(store.experiment(bench.experiment.id)?.marks).toHaveLength(2);
  });

  it('a file of a stored experiment becomes a step of it, which can be undone', async () => {
    const stored = exampleExperiment([exampleMark('a', { lengthM: 0.16 })]);
    const store = new MemoryStore([stored]);
    const bench = await begin(store);
    await bench.experiments.openNew(false);
    await bench.experiments.open({ ...stored, marks: [] }, 'open file');
    expect(lengths(bench)).toEqual([]);
    bench.undo();
    expect(lengths(bench)).toEqual([0.16]);
  });

  it('what is done while the store still opens is kept, and the stored one stays', async () => {
    const stored = exampleExperiment([exampleMark('a', { lengthM: 0.16 })]);
    const store = new MemoryStore([stored]);
    let give = (): void => undefined;
    const opening = new Promise<BenchStore>((resolve) => (give = () => resolve(store)));
    const bench = benchInTest({ openStore: () => opening, newId });
    const restoring = bench.restore();
    bench.addMarkByHand(0.5);
    give();
    await restoring;
    await bench.keeping.idle();
    expect(lengths(bench)).toEqual([0.5]);
    expect(store.experiment(bench.experiment.id)?.marks).toHaveLength(1);
    expect(store.experiment('example')).toEqual(stored);
  });
});

/** Another tab that has the experiment until it is taken. */
function heldElsewhere(): { createHold: (handlers: TabHandlers) => BenchHold; handlers: () => TabHandlers } {
  let kept: TabHandlers | null = null;
  return {
    createHold: (handlers) => {
      kept = handlers;
      return { ...freeHold, hold: () => Promise.resolve(false) };
    },
    handlers: () => {
      if (kept === null) throw new Error('no hold was made');
      return kept;
    },
  };
}

describe('two tabs', () => {
  const stored = exampleExperiment([exampleMark('a', { lengthM: 0.16 })]);

  it('the second one shows what the first one saves, changes nothing and says why', async () => {
    const store = new MemoryStore([stored]);
    const other = heldElsewhere();
    const bench = await begin(store, { createHold: other.createHold });
    expect(bench.keeping.access).toBe('elsewhere');
    bench.addMarkByHand(0.2);
    expect(lengths(bench)).toEqual([0.16]);
    expect(bench.notice?.message).toMatch(/open in another tab/);
    store.saveFromElsewhere({ ...stored, marks: [exampleMark('a', { lengthM: 0.17 })] });
    other.handlers().onSaved('example');
    await new Promise((resolve) => setTimeout(resolve));
    expect(lengths(bench)).toEqual([0.17]);
  });

  it('taking over goes on from what the other tab saved last', async () => {
    const store = new MemoryStore([stored]);
    const bench = await begin(store, { createHold: heldElsewhere().createHold });
    store.saveFromElsewhere({ ...stored, title: 'Later', marks: [] });
    await bench.keeping.takeOver();
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    expect(store.experiment('example')).toMatchObject({ title: 'Later', marks: [{ lengthM: 0.2 }] });
  });

  it('the tab that hands over has written all, then only shows', async () => {
    const store = new MemoryStore([stored]);
    let handlers: TabHandlers | null = null;
    const bench = await begin(store, { createHold: (given) => ((handlers = given), freeHold) });
    bench.addMarkByHand(0.2);
    await (handlers as TabHandlers | null)?.onHandOver();
    expect(store.experiment('example')?.marks).toHaveLength(2);
    bench.addMarkByHand(0.3);
    expect(lengths(bench)).toEqual([0.16, 0.2]);
  });

  it('without locks the later save is refused, nothing is overwritten, and a copy saves both', async () => {
    const store = new MemoryStore([stored]);
    const bench = await begin(store);
    store.saveFromElsewhere({ ...stored, title: 'The other tab’s' });
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    expect(bench.keeping.access).toBe('apart');
    expect(bench.saveState).toMatchObject({ kind: 'refused', fault: 'elsewhere' });
    expect(store.experiment('example')?.title).toBe('The other tab’s');
    await bench.experiments.openCopy();
    await bench.keeping.idle();
    expect(bench.saveState).toEqual({ kind: 'saved' });
    expect(store.experiment(bench.experiment.id)?.marks).toHaveLength(2);
  });
});

describe('storage that is taken away', () => {
  it('by the browser: says so, saves the open experiment anew, and goes on', async () => {
    const first = new MemoryStore();
    const second = new MemoryStore();
    const stores = [first, second];
    let gone: (by: 'the browser' | 'another tab') => void = () => undefined;
    const bench = await begin(first, {
      openStore: (onGone) => {
        gone = onGone;
        return Promise.resolve(stores.shift() ?? second);
      },
    });
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    gone('the browser');
    await new Promise((resolve) => setTimeout(resolve));
    await bench.keeping.idle();
    expect(second.experiment(bench.experiment.id)?.marks).toHaveLength(1);
    expect(bench.notice?.message).toMatch(/was erased/);
    expect(bench.saveState).toEqual({ kind: 'saved' });
  });

  it('by a person in another tab: is not filled again behind their back', async () => {
    const store = new MemoryStore();
    let gone: (by: 'the browser' | 'another tab') => void = () => undefined;
    const bench = await begin(store, {
      openStore: (onGone) => {
        gone = onGone;
        return Promise.resolve(store);
      },
    });
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    gone('another tab');
    expect(bench.saveState).toMatchObject({ kind: 'refused', fault: 'gone' });
    bench.addMarkByHand(0.3);
    await bench.keeping.idle();
    expect(store.experiment(bench.experiment.id)?.marks).toHaveLength(1);
    await bench.keeping.tryAgain();
    await bench.keeping.idle();
    expect(store.experiment(bench.experiment.id)?.marks).toHaveLength(2);
  });
});
