import { describe, expect, it } from 'vitest';
import type { TabHandlers } from '../../../../src/notebook/tabHold.ts';
import type {
  ExperimentHold,
  ExperimentStore,
  KeepingOutside,
} from '../../../../src/session/experiment/keeping.ts';
import { planOf } from '../../../../src/notebook/lessonLink.ts';
import { openLesson } from '../../../../src/session/experiment/lessonArrival.ts';
import type { Session } from '../../../../src/session/session.ts';
import { experimentList } from '../../../../src/session/experiment/experimentList.ts';
import type { ExperimentEntry } from '../../../../src/session/experiment/experimentList.ts';
import { EXAMPLE_TIME, exampleExperiment, exampleMark } from '../../notebook/exampleExperiment.ts';
import { MemoryStore, freeHold } from '../../notebook/memoryStore.ts';
import { benchInTest, told } from '../benchInTest.ts';
import { words } from '../../../../src/words/inUse.ts';
import { mendedNote } from '../../../../src/words/mended.ts';
import { recordFaultWords } from '../../../../src/words/recordFaults.ts';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { titleWords } from '../../../../src/words/titles.ts';

function faultOf(entries: readonly ExperimentEntry[], entryId: string): string | null {
  const fault = entries.find(({ id }) => id === entryId)?.fault ?? null;
  return fault === null ? null : recordFaultWords(fault);
}

// Of all sessions together: several work on one store.
let ids = 0;
const newId = (): string => `new-${(ids += 1)}`;

async function begin(store: ExperimentStore, outside: Partial<KeepingOutside> = {}): Promise<Session> {
  const bench = benchInTest({ openStore: () => Promise.resolve(store), newId, ...outside });
  await bench.restore();
  return bench;
}

const lengths = (bench: Session): (number | null)[] => bench.experiment.marks.map((mark) => mark.lengthM);

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
    expect(titleWords(bench.experiment)).toBe('Experiment 2');
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    expect(store.experiment(id)?.marks).toHaveLength(1);
    await bench.experiments.openStored(id);
    expect(lengths(bench)).toEqual([0.1]);
    await bench.experiments.openCopy();
    bench.addMarkByHand(0.3);
    await bench.keeping.idle();
    expect(titleWords(bench.experiment)).toBe('Experiment (copy)');
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

  it('new ones and files that are opened in a lesson keep back what it keeps back', async () => {
    const hiding = { task: 'Find two.', hideExpected: false, hideTheory: true, hideTruth: false };
    const inLesson: Experiment = { ...exampleExperiment(), lesson: hiding };
    const bench = await begin(new MemoryStore([inLesson]));
    await bench.experiments.openNew(false);
    expect(bench.experiment).toMatchObject({ marks: [], lesson: hiding });
    await bench.experiments.open({ ...exampleExperiment(), id: 'own table' }, 'open table');
    expect(bench.experiment).toMatchObject({ id: 'own table', lesson: hiding });
    const shown = { ...hiding, task: 'Altered.', hideTheory: false };
    await bench.experiments.open({ ...exampleExperiment(), id: 'altered', lesson: shown }, 'open file');
    expect(bench.experiment.lesson).toEqual({ ...shown, hideTheory: true });
  });

  it('what is done while the store still opens is kept, and the stored one stays', async () => {
    const stored = exampleExperiment([exampleMark('a', { lengthM: 0.16 })]);
    const store = new MemoryStore([stored]);
    let give = (): void => undefined;
    const opening = new Promise<ExperimentStore>((resolve) => (give = () => resolve(store)));
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
function heldElsewhere(): {
  createHold: (handlers: TabHandlers) => ExperimentHold;
  handlers: () => TabHandlers;
} {
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
    expect(told(bench)).toMatch(/open in another tab/);
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
    expect(told(bench)).toMatch(/was erased/);
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

/** A store whose writes wait until they are let through; each that was let through is in. */
class SlowStore extends MemoryStore {
  readonly waiting: (() => void)[] = [];

  override async save(...given: Parameters<MemoryStore['save']>) {
    await new Promise<void>((resolve) => this.waiting.push(resolve));
    return super.save(...given);
  }

  /** Lets writes through until none comes any more. */
  async letAll(): Promise<void> {
    for (let go = this.waiting.shift(); go !== undefined; go = this.waiting.shift()) {
      go();
      await turn();
    }
  }
}

/** A store without room. */
class FullStore extends MemoryStore {
  isFull = true;

  override save(...given: Parameters<MemoryStore['save']>) {
    if (this.isFull) return Promise.reject(new DOMException('no room', 'QuotaExceededError'));
    return super.save(...given);
  }
}

const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('“saved” is said only of what is in the store', () => {
  it('not before anything was entered', async () => {
    const bench = await begin(new MemoryStore());
    expect(bench.saveState).toEqual({ kind: 'nothing' });
    bench.addMarkByHand(0.2);
    expect(bench.saveState).toEqual({ kind: 'saving' });
    await bench.keeping.idle();
    expect(bench.saveState).toEqual({ kind: 'saved' });
  });

  it('not while the store still opens, nor after it was refused', async () => {
    let refuse = (): void => undefined;
    const opening = new Promise<ExperimentStore>((_resolve, reject) => {
      refuse = () => reject(new DOMException('not here', 'SecurityError'));
    });
    const bench = benchInTest({ openStore: () => opening, newId });
    const restoring = bench.restore();
    bench.addMarkByHand(0.2);
    expect(bench.saveState).toEqual({ kind: 'saving' });
    refuse();
    await restoring;
    expect(bench.saveState).toMatchObject({ kind: 'refused', fault: 'refused' });
    bench.addMarkByHand(0.3);
    expect(bench.saveState).toMatchObject({ kind: 'refused', fault: 'refused' });
  });

  for (const waits of [0, 1]) {
    it(`not where another tab takes the store during a write, ${waits} more waiting`, async () => {
      const store = new SlowStore();
      let gone: (by: 'another tab') => void = () => undefined;
      const states: string[] = [];
      const bench = await begin(store, {
        openStore: (onGone) => {
          gone = onGone;
          return Promise.resolve(store);
        },
      });
      bench.watch(['keeping'], () => states.push(bench.saveState.kind));
      bench.addMarkByHand(0.2);
      if (waits > 0) bench.addMarkByHand(0.3);
      gone('another tab');
      await store.letAll();
      await bench.keeping.idle();
      expect(bench.saveState).toMatchObject({ kind: 'refused', fault: 'gone' });
      expect(states).not.toContain('saved');
    });
  }

  it('a burst that spans the opening of another experiment leaves the last state of both', async () => {
    const store = new SlowStore();
    const bench = await begin(store);
    const { id } = bench.experiment;
    bench.addMarkByHand(0.1);
    bench.addMarkByHand(0.2);
    const opening = bench.experiments.openNew(true);
    bench.addMarkByHand(0.3);
    await store.letAll();
    await opening;
    bench.addMarkByHand(0.4);
    await store.letAll();
    await bench.keeping.idle();
    expect(bench.experiment.id).not.toBe(id);
    expect(store.experiment(id)?.marks.map(({ lengthM }) => lengthM)).toEqual([0.1, 0.2, 0.3]);
    expect(store.experiment(bench.experiment.id)?.marks.map(({ lengthM }) => lengthM)).toEqual([0.4]);
    expect(bench.saveState).toEqual({ kind: 'saved' });
  });

  it('two experiments opened at the same moment are both kept', async () => {
    const store = new SlowStore();
    const bench = await begin(store);
    const one = exampleExperiment([exampleMark('a', { lengthM: 0.1 })]);
    const opening = Promise.all(
      ['one', 'two'].map((id) => bench.experiments.open({ ...one, id, title: id }, 'open file')),
    );
    const isOver = { yet: false };
    void opening.then(() => (isOver.yet = true));
    while (!isOver.yet) {
      await turn();
      await store.letAll();
    }
    await bench.keeping.idle();
    expect(store.experiment('one')?.title).toBe('one');
    expect(store.experiment('two')?.title).toBe('two');
  });

  it('what another tab takes over while it couldn’t be saved isn’t given up for what is stored', async () => {
    const stored = exampleExperiment([exampleMark('a', { lengthM: 0.16 })]);
    const store = new FullStore([stored]);
    let handlers: TabHandlers | null = null;
    const bench = await begin(store, { createHold: (given) => ((handlers = given), freeHold) });
    bench.addMarkByHand(0.2);
    await (handlers as TabHandlers | null)?.onHandOver();
    expect(bench.keeping.access).toBe('apart');
    store.saveFromElsewhere({ ...stored, title: 'The other tab’s' });
    (handlers as TabHandlers | null)?.onSaved('example');
    (handlers as TabHandlers | null)?.onGained();
    await turn();
    expect(lengths(bench)).toEqual([0.16, 0.2]);
    store.isFull = false;
    await bench.experiments.openCopy();
    await bench.keeping.idle();
    expect(store.experiment(bench.experiment.id)?.marks).toHaveLength(2);
    expect(store.experiment('example')?.title).toBe('The other tab’s');
  });
});

describe('what a visit begins with', () => {
  /** What one tab remembers over a reload. */
  function tab(): { tabMemory: KeepingOutside['tabMemory'] } {
    let kept: string | null = null;
    return { tabMemory: { get: () => kept, set: (id) => (kept = id) } };
  }
  const one = { ...exampleExperiment([]), id: 'one' };
  const two = { ...exampleExperiment([]), id: 'two' };

  it('is the experiment that was open last, also where nothing was changed in it', async () => {
    const store = new MemoryStore([one, two]);
    const first = tab();
    const bench = await begin(store, first);
    expect(bench.experiment.id).toBe('two');
    await bench.experiments.openStored('one');
    expect((await begin(store, first)).experiment.id).toBe('one');
    expect((await begin(store, tab())).experiment.id).toBe('one');
  });

  it('is the last of any tab where this tab’s own is there no more', async () => {
    const store = new MemoryStore([one, two]);
    const memory = tab();
    memory.tabMemory.set('gone');
    expect((await begin(store, memory)).experiment.id).toBe('two');
  });

  it('is what is stored, also where a part of the page can’t show it: storage isn’t blamed', async () => {
    const high = { ...two, forks: two.forks.map((fork) => ({ ...fork, nominalHz: 4096 })) };
    const faults: unknown[] = [];
    const bench = benchInTest({
      openStore: () => Promise.resolve(new MemoryStore([one, high])),
      onFault: (error) => faults.push(error),
    });
    // What the practice column did.
    bench.watch(['notebook'], () => {
      if (bench.presentFork.nominalHz > 2100) throw new RangeError('stampedHz must be 100..2100, got 4096');
    });
    await bench.restore();
    expect(bench.experiment.id).toBe('two');
    expect(bench.saveState).toEqual({ kind: 'saved' });
    expect(told(bench)).toBe(words.pageFault.follow);
    expect(faults).toHaveLength(1);
    const listed = await bench.keeping.list();
    expect(
      'value' in listed &&
        experimentList(listed.value, mendedNote)
          .map(({ id }) => id)
          .sort(),
    ).toEqual(['one', 'two']);
    await bench.experiments.openStored('one');
    bench.addMarkByHand(0.2);
    await bench.keeping.idle();
    expect(bench.saveState).toEqual({ kind: 'saved' });
  });

  it('is said where it can’t be read; it is listed with its reason, and the others open', async () => {
    const broken = { id: 'broken', schemaVersion: 2, title: 'Half', marks: 'none' };
    const bench = await begin(new MemoryStore([one, two, broken]));
    expect(told(bench)).toMatch(/couldn’t be read: .*It is saved as it is, under Records/);
    const listed = await bench.keeping.list();
    const entries = 'value' in listed ? experimentList(listed.value, mendedNote) : [];
    expect(faultOf(entries, 'broken')).toMatch(/forks must be a list/);
    expect(
      entries
        .filter(({ fault }) => fault === null)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(['one', 'two']);
    await bench.experiments.openStored('broken');
    expect(told(bench)).toMatch(/can’t be opened: .* Under Records it can be saved as it is/);
    await bench.experiments.openStored('one');
    expect(bench.experiment.id).toBe('one');
  });

  it('a record that its very reader fails on doesn’t hide the others', () => {
    const hostile = new Proxy(
      {},
      {
        get: () => {
          throw new Error('not even looked at');
        },
        getOwnPropertyDescriptor: () => {
          throw new Error('not even looked at');
        },
      },
    );
    const record = (id: string, experiment: unknown) => ({
      id,
      experiment,
      history: null,
      revision: 1,
      deletedAt: null,
    });
    const entries = experimentList(
      [record('one', one), record('hostile', hostile), record('two', two)],
      mendedNote,
    );
    expect(entries.map(({ id }) => id).sort()).toEqual(['hostile', 'one', 'two']);
    expect(faultOf(entries, 'hostile')).toMatch(/can’t be read/);
  });

  it('a file of an experiment whose record can’t be read opens as a copy; the record stays', async () => {
    const broken = { id: 'example', schemaVersion: 2, title: 'Half', marks: 'none' };
    const store = new MemoryStore([broken]);
    const bench = await begin(store);
    await bench.experiments.open(exampleExperiment([exampleMark('a', { lengthM: 0.16 })]), 'open file');
    await bench.keeping.idle();
    expect(lengths(bench)).toEqual([0.16]);
    expect(bench.saveState).toEqual({ kind: 'saved' });
    expect(store.experiment('example')).toEqual(broken);
  });
});

describe('work that couldn’t be saved gives way only after a question', () => {
  const stored = { ...exampleExperiment([]), id: 'stored' };
  const ways: readonly (readonly [string, (bench: Session) => Promise<unknown>])[] = [
    ['New from scratch', (bench) => bench.experiments.openNew(false)],
    ['New, same apparatus', (bench) => bench.experiments.openNew(true)],
    ['Open', (bench) => bench.experiments.openStored('stored')],
    ['a file', (bench) => bench.experiments.open({ ...stored, id: 'file' }, 'open file')],
    [
      'a lesson link',
      (bench) =>
        openLesson(
          bench,
          {
            plan: planOf(exampleExperiment(), {
              task: '',
              hideExpected: false,
              hideTheory: false,
              hideTruth: false,
            }),
            unheardHz: [],
          },
          EXAMPLE_TIME,
        ),
    ],
    ['Delete', (bench) => bench.experiments.putAway(bench.experiment.id)],
  ];
  for (const [name, go] of ways) {
    it(name, async () => {
      const bench = await begin(new FullStore([stored]));
      await bench.experiments.openNew(true);
      bench.addMarkByHand(0.2);
      const { id } = bench.experiment;
      let asked = 0;
      let answer = false;
      bench.experiments.askFirst = () => {
        asked += 1;
        return Promise.resolve(answer);
      };
      await go(bench);
      expect(asked).toBe(1);
      expect(bench.experiment.id).toBe(id);
      expect(lengths(bench)).toEqual([0.2]);
      expect(told(bench) ?? '').not.toMatch(/set up|deleted/);
      answer = true;
      await go(bench);
      expect(asked).toBe(2);
      expect(bench.experiment.id).not.toBe(id);
    });
  }

  it('nothing is asked where all is saved, or nothing was entered', async () => {
    const store = new FullStore([stored]);
    const bench = await begin(store);
    bench.experiments.askFirst = () => Promise.reject(new Error('asked'));
    await bench.experiments.openNew(false);
    await bench.experiments.openNew(false);
    store.isFull = false;
    bench.addMarkByHand(0.2);
    await bench.experiments.openNew(false);
    await bench.experiments.openStored('stored');
    expect(bench.experiment.id).toBe('stored');
  });
});
