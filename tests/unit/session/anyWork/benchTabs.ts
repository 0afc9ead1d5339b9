import { setImmediate as turn } from 'node:timers/promises';
import { Session } from '../../../../src/session/session.ts';
import { benchInTest } from '../benchInTest.ts';
import type { Line } from './line.ts';
import { lineOf } from './line.ts';
import { NotebookInTest } from './notebookInTest.ts';
import { PracticeEars } from './practiceEars.ts';
import { TabLocks } from './tabLocks.ts';

const BEGIN_MS = Date.UTC(2030, 2, 1);

/** What lies in the notebook as far as anybody knows. */
export interface Kept {
  readonly line: Line;
  readonly isAway: boolean;
}

/** One tab: its bench, and what its person expects to see there. */
export interface Tab {
  readonly bench: Session;
  readonly ears: PracticeEars;
  readonly leave: () => void;
  /** Whether no other tab can have this experiment now. */
  readonly has: (id: string) => boolean;
  /** What the browser remembers for the tab over a reload. */
  readonly memory: { id: string | null };
  line: Line;
  /** Marks of this run whose trace may still grow. */
  growing: Set<string>;
  /** Whether storage has failed this tab since it last said that all is saved. */
  isTroubled: boolean;
  /** Whether it only showed another tab's work when it was looked at last. */
  isFollowing: boolean;
  /** How often the page has asked whether work that isn't saved may be given up; the answer is always no. */
  questions: number;
  /** The newest flag of this run. */
  lastFlag: {
    readonly slide: string;
    readonly sounding: number;
    /** The mark that it made, and the one that stood for its resonance. */
    readonly own: string;
    readonly standsFor: string;
  } | null;
}

/** A browser with the notebook and up to two tabs of the bench, and what must be in them: the plain model beside them. */
export class BenchTabs {
  readonly notebook = new NotebookInTest();
  readonly locks = new TabLocks();
  readonly tabs: (Tab | null)[] = [null, null];
  /** By id. */
  readonly kept = new Map<string, Kept>();
  /** Experiments that were saved as files. */
  readonly files: string[] = [];
  private ids = 0;
  private seconds = 0;

  /** @param hasLocks  false: as on plain http, where every tab gets every experiment */
  constructor(readonly hasLocks: boolean) {}

  /** A clock that goes on by a second whenever somebody looks. */
  readonly now = (): string => new Date(BEGIN_MS + 1000 * (this.seconds += 1)).toISOString();
  readonly newId = (): string => `id-${(this.ids += 1)}`;

  tab(index: number): Tab | null {
    return this.tabs[index] ?? null;
  }

  /** Opens the bench in a tab, or loads it anew. */
  async open(index: number): Promise<Tab> {
    const before = this.tab(index);
    before?.leave();
    const memory = before?.memory ?? { id: null };
    const ears = new PracticeEars();
    const leaving: (() => void)[] = [];
    let has = (_id: string): boolean => false;
    const bench = benchInTest({
      now: this.now,
      newId: this.newId,
      openStore: async (onGone) => {
        const store = await this.notebook.open(onGone);
        leaving.push(() => store.close());
        return store;
      },
      createHold: (handlers) => {
        const entered = this.locks.enter(handlers);
        leaving.push(entered.leave);
        has = entered.has;
        if (this.hasLocks) return entered.hold;
        return { ...entered.hold, hold: () => Promise.resolve(true), takeOver: () => Promise.resolve() };
      },
      tabMemory: { get: () => memory.id, set: (id) => (memory.id = id) },
      createListening: ears.createListening,
    });
    await bench.restore();
    const line = lineOf(bench.history);
    const leave = (): void => leaving.forEach((end) => end());
    const tab: Tab = {
      isFollowing: false,
      questions: 0,
      bench,
      ears,
      leave,
      has: (id) => has(id),
      memory,
      line,
      growing: new Set<string>(),
      isTroubled: this.notebook.mood !== 'well',
      lastFlag: null,
    };
    const askFirst = (): Promise<boolean> => {
      tab.questions += 1;
      return Promise.resolve(false);
    };
    Object.assign(bench.experiments, { askFirst });
    this.tabs[index] = tab;
    await this.settle();
    return tab;
  }

  close(index: number): void {
    this.tab(index)?.leave();
    this.tabs[index] = null;
  }

  /** Until nothing is under way any more: the bench waits for no clock. */
  async settle(): Promise<void> {
    for (let time = 0; time < 2; time += 1) {
      for (const tab of this.tabs) await tab?.bench.keeping.idle();
      await turn();
    }
  }

  /** Until all has been done that waits for nothing. */
  async turn(): Promise<void> {
    await turn();
  }
}
