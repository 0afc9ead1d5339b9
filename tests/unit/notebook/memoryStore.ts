import type { Experiment } from '../../../src/notebook/experiment.ts';
import type { History } from '../../../src/notebook/history.ts';
import type { StoredExperiment } from '../../../src/notebook/notebookStore.ts';
import { ConflictError } from '../../../src/notebook/storageFault.ts';
import type { BenchHold, BenchStore } from '../../../src/session/benchKeeping.ts';

/** The notebook's store in memory, values copied on the way in and out as the browser does. */
export class MemoryStore implements BenchStore {
  private readonly records = new Map<string, StoredExperiment>();
  private lastId: string | null = null;

  /** @param stored  records as another visit left them; the last one was open */
  constructor(stored: readonly { readonly id: string }[] = []) {
    for (const experiment of stored) this.put(experiment.id, experiment, null, 0);
  }

  experiment(id: string): Experiment | undefined {
    return structuredClone(this.records.get(id)?.experiment) as Experiment | undefined;
  }

  /** What another tab saves. */
  saveFromElsewhere(experiment: Experiment): void {
    const { revision } = this.records.get(experiment.id) ?? { revision: 0 };
    this.put(experiment.id, experiment, null, revision + 1);
  }

  async save(history: History<Experiment>, afterRevision: number, isOpen: boolean) {
    const lastId = this.lastId;
    await Promise.resolve();
    const { present, past, future } = history;
    const there = this.records.get(present.id);
    if (there !== undefined && there.revision !== afterRevision) throw new ConflictError();
    this.put(present.id, present, { past, future }, afterRevision + 1);
    if (!isOpen) this.lastId = lastId;
    return { revision: afterRevision + 1, wasGone: there === undefined && afterRevision > 0 };
  }

  load(id: string): Promise<StoredExperiment | null> {
    return Promise.resolve(structuredClone(this.records.get(id) ?? null));
  }

  openId(): Promise<string | null> {
    return Promise.resolve(this.lastId);
  }

  list(): Promise<readonly StoredExperiment[]> {
    return Promise.resolve([...this.records.values()].map((record) => structuredClone(record)));
  }

  putAway(id: string, deletedAt: string | null): Promise<void> {
    const there = this.records.get(id);
    if (there !== undefined) this.records.set(id, { ...there, revision: there.revision + 1, deletedAt });
    return Promise.resolve();
  }

  remove(id: string): Promise<void> {
    this.records.delete(id);
    return Promise.resolve();
  }

  close(): void {
    this.records.clear();
  }

  private put(id: string, experiment: unknown, history: unknown, revision: number): void {
    this.records.set(id, structuredClone({ id, experiment, history, revision, deletedAt: null }));
    this.lastId = id;
  }
}

/** A browser with one tab. */
export const freeHold: BenchHold = {
  hold: () => Promise.resolve(true),
  takeOver: () => Promise.resolve(),
  saved: () => undefined,
  whileFree: async (_id, action) => {
    await action();
    return true;
  },
};
