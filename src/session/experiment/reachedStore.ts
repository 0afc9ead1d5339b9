import type { WriteMended } from '../../notebook/mendRecord.ts';
import type { StoredExperiment } from '../../notebook/notebookStore.ts';
import { readStored } from '../../notebook/readStored.ts';
import { GoneError, StorageError, askStorage, storageFault } from '../../notebook/storageFault.ts';
import type { Asked, StorageFault } from '../../notebook/storageFault.ts';
import type { ExperimentStore } from './keepingOutside.ts';
import type { Loaded } from './loaded.ts';

/** The notebook's store as far as this tab reaches it: not opened yet, open, or out of reach for a reason. */
export class ReachedStore {
  private open: ExperimentStore | null = null;
  private why: StorageFault | null = null;

  constructor(private readonly writeMended: WriteMended) {}

  /** null while it is being opened, or out of reach. */
  get store(): ExperimentStore | null {
    return this.open;
  }

  /** Why it is out of reach; null where it is open, or being opened. */
  get fault(): StorageFault | null {
    return this.why;
  }

  /** Why a store that was there a moment ago is no more. */
  get reason(): StorageFault {
    return this.why ?? storageFault(new GoneError('the browser'));
  }

  take(store: ExperimentStore): void {
    this.open = store;
    this.why = null;
  }

  giveUp(fault: StorageFault): void {
    this.open = null;
    this.why = fault;
  }

  close(): void {
    this.open?.close();
    this.giveUp(storageFault(new GoneError('this tab')));
  }

  /**
   * What is stored under this id, read. Never rejects.
   * @param orPutAway  also what was put away: the next save brings it back
   */
  async load(id: string, orPutAway: boolean): Promise<Loaded> {
    const { open } = this;
    if (open === null) return this.why === null ? MISSING : { kind: 'refused', fault: this.why };
    const asked = await askStorage(() => open.load(id));
    if ('fault' in asked) return { kind: 'refused', fault: asked.fault };
    const stored = asked.value;
    if (stored === null || (stored.deletedAt !== null && !orPutAway)) return MISSING;
    const reading = readStored(stored, this.writeMended);
    return reading.kind === 'faults'
      ? { kind: 'unreadable', faults: reading.faults }
      : { kind: 'there', history: reading.history, revision: stored.revision };
  }

  /** Every record, readable or not. Never rejects. */
  list(): Promise<Asked<readonly StoredExperiment[]>> {
    const { open } = this;
    if (open !== null) return askStorage(() => open.list());
    return Promise.resolve(this.why === null ? { value: [] } : { fault: this.why });
  }

  /** @throws StorageError (rejects) where storage refuses or is out of reach */
  async must<T>(request: (store: ExperimentStore) => Promise<T>): Promise<T> {
    const { open } = this;
    if (open === null) throw new StorageError(this.reason);
    const asked = await askStorage(() => request(open));
    if ('fault' in asked) throw new StorageError(asked.fault);
    return asked.value;
  }
}

const MISSING: Loaded = { kind: 'missing' };
