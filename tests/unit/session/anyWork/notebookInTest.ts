import type { StoredExperiment } from '../../../../src/notebook/notebookStore.ts';
import type { StoreTaker } from '../../../../src/notebook/openNotebook.ts';
import type { ExperimentStore } from '../../../../src/session/experiment/keeping.ts';
import { MemoryStore } from '../../notebook/memoryStore.ts';

/** How the browser's storage is disposed. `full`: nothing more is taken. `refused`: it can't be opened either. */
export type StoreMood = 'well' | 'full' | 'broken' | 'refused';

interface Handle {
  isClosed: boolean;
  readonly onGone: (by: StoreTaker) => void;
}

/** One browser's notebook, which several tabs have open, and what can happen to it. */
export class NotebookInTest {
  mood: StoreMood = 'well';
  /** Whether what is asked waits. */
  isSlow = false;
  private memory = new MemoryStore();
  private handles: Handle[] = [];
  private gate: Promise<void> = Promise.resolve();
  private openGate: () => void = () => undefined;

  /** Whether what is asked of an open store fails, all of it or what is written. */
  get isFailing(): boolean {
    return this.mood === 'full' || this.mood === 'broken';
  }

  /** Opens the store for a tab, as `KeepingOutside.openStore` does. */
  readonly open = async (onGone: (by: StoreTaker) => void): Promise<ExperimentStore> => {
    await this.gate;
    if (this.mood === 'refused') throw new DOMException('denied', 'SecurityError');
    const handle = { isClosed: false, onGone };
    this.handles.push(handle);
    return this.guard(this.memory, handle);
  };

  /** Everything asked from now on waits for `goOn`. */
  holdUp(): void {
    this.isSlow = true;
    this.gate = new Promise((resolve) => (this.openGate = resolve));
  }

  goOn(): void {
    this.isSlow = false;
    this.openGate();
  }

  /** All is erased: a tab's connection is closed first. What was asked before still ends, in the store that is gone. */
  erase(by: StoreTaker): void {
    const open = this.handles.filter((handle) => !handle.isClosed);
    this.handles = [];
    this.memory = new MemoryStore();
    for (const handle of open) {
      handle.isClosed = true;
      handle.onGone(by);
    }
  }

  /** What lies in the store, whatever its mood. */
  async records(): Promise<ReadonlyMap<string, StoredExperiment>> {
    const list = await this.memory.list();
    return new Map(list.map((record) => [record.id, record]));
  }

  private guard(memory: MemoryStore, handle: Handle): ExperimentStore {
    const writes = new Set(['save', 'putAway', 'addSoundPiece']);
    const ask = async (name: string, action: () => unknown): Promise<unknown> => {
      if (handle.isClosed) throw new DOMException('The connection is closing.', 'InvalidStateError');
      await this.gate;
      if (this.mood === 'full' && writes.has(name)) throw new DOMException('no room', 'QuotaExceededError');
      if (this.mood === 'broken') throw new DOMException('Internal error', 'UnknownError');
      return action();
    };
    // Whatever the store's methods are called: each first finds the connection closed, the store slow, full or broken.
    return new Proxy(memory, {
      get: (target, name: string) => {
        if (name === 'close') return () => (handle.isClosed = true);
        const method: unknown = Reflect.get(target, name);
        if (typeof method !== 'function') return method;
        return (...values: unknown[]) => ask(name, () => Reflect.apply(method, target, values));
      },
    });
  }
}
