import { deleteDB, openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { Experiment } from './experiment.ts';
import type { History, HistoryStep } from './history.ts';
import { ConflictError } from './storageFault.ts';

/** Whether and how an experiment stands on the shelf. Absent for records of the first store: revision 0. */
interface ShelfRecord {
  readonly id: string;
  /** Grows by one with every save, so that a tab notices what another one wrote. */
  readonly revision: number;
  /** When it was put away, ISO 8601; null while it stands in the list. */
  readonly deletedAt: string | null;
}

interface NotebookSchema extends DBSchema {
  experiments: { key: string; value: Experiment };
  /** In one value, so that what many steps share is stored once. */
  histories: { key: string; value: { past: StoredSteps; future: StoredSteps } };
  shelf: { key: string; value: ShelfRecord };
  desk: { key: string; value: string };
}

/** Who takes a store away: a tab that erases everything, or the browser, as when site data are cleared. */
export type StoreTaker = 'another tab' | 'the browser';

type StoredSteps = readonly HistoryStep<Experiment>[];

/** One experiment as it lies in the store: check it before use. */
export interface StoredExperiment {
  readonly id: string;
  readonly experiment: unknown;
  /** Null where none was kept or asked for. */
  readonly history: unknown;
  readonly revision: number;
  readonly deletedAt: string | null;
}

const DATABASE = 'air-column-bench';
const VERSION = 2;
const OPEN_KEY = 'open';
/** On the disk when it is called saved, not only handed to the system. */
const DURABLE = { durability: 'strict' } as const;

/** Experiments kept in this browser. Every method rejects where storage fails: `storageFault` puts it in words. */
export class NotebookStore {
  private constructor(private readonly database: IDBPDatabase<NotebookSchema>) {}

  /**
   * Opens the store, making it on first use and bringing an earlier one up to date.
   * @param onGone  told when the store is taken away while it is in use
   */
  static async open(onGone: (by: StoreTaker) => void = () => undefined): Promise<NotebookStore> {
    const database: IDBPDatabase<NotebookSchema> = await openDB<NotebookSchema>(DATABASE, VERSION, {
      upgrade(fresh, oldVersion) {
        if (oldVersion < 1) {
          fresh.createObjectStore('experiments', { keyPath: 'id' });
          fresh.createObjectStore('desk');
        }
        if (oldVersion < 2) {
          fresh.createObjectStore('histories');
          fresh.createObjectStore('shelf', { keyPath: 'id' });
        }
      },
      // Another tab erases everything or brings a newer store: stand aside, else it waits for ever.
      blocking() {
        database.close();
        onGone('another tab');
      },
      terminated: () => onGone('the browser'),
    });
    return new NotebookStore(database);
  }

  /** Erases the whole store, other tabs' included. */
  static async erase(): Promise<void> {
    await deleteDB(DATABASE);
  }

  /**
   * Puts an experiment in with its steps, all or nothing.
   * @param afterRevision  the revision that this state follows; 0 for a new experiment
   * @param isOpen  also notes that it is the one that the next visit begins with
   * @returns the new revision, and whether the record had vanished in the meantime
   * @throws ConflictError when something else was saved since (rejects; nothing is changed)
   */
  async save(
    history: History<Experiment>,
    afterRevision: number,
    isOpen: boolean,
  ): Promise<{ readonly revision: number; readonly wasGone: boolean }> {
    const { present, past, future } = history;
    const transaction = this.database.transaction(
      ['experiments', 'histories', 'shelf', 'desk'],
      'readwrite',
      DURABLE,
    );
    const shelf = transaction.objectStore('shelf');
    const there = await shelf.get(present.id);
    if (there !== undefined && there.revision !== afterRevision) {
      transaction.abort();
      await transaction.done.catch(() => undefined);
      throw new ConflictError();
    }
    const revision = afterRevision + 1;
    await Promise.all([
      transaction.objectStore('experiments').put(present),
      transaction.objectStore('histories').put({ past, future }, present.id),
      shelf.put({ id: present.id, revision, deletedAt: null }),
      isOpen ? transaction.objectStore('desk').put(present.id, OPEN_KEY) : null,
      transaction.done,
    ]);
    return { revision, wasGone: there === undefined && afterRevision > 0 };
  }

  /** One experiment with its steps; null where there is none. */
  async load(id: string): Promise<StoredExperiment | null> {
    const transaction = this.database.transaction(['experiments', 'histories', 'shelf']);
    const [experiment, history, shelf] = await Promise.all([
      transaction.objectStore('experiments').get(id),
      transaction.objectStore('histories').get(id),
      transaction.objectStore('shelf').get(id),
    ]);
    return experiment === undefined ? null : stored(id, experiment, history, shelf);
  }

  /** Id of the experiment that was open last, in whatever tab; null on a first visit. */
  async openId(): Promise<string | null> {
    return (await this.database.get('desk', OPEN_KEY)) ?? null;
  }

  /** Every experiment, put away or not, without its steps. */
  async list(): Promise<readonly StoredExperiment[]> {
    const transaction = this.database.transaction(['experiments', 'shelf']);
    const [ids, experiments, shelf] = await Promise.all([
      transaction.objectStore('experiments').getAllKeys(),
      transaction.objectStore('experiments').getAll(),
      transaction.objectStore('shelf').getAll(),
    ]);
    const shelfById = new Map(shelf.map((record) => [record.id, record]));
    return experiments.map((experiment, index) => {
      const id = ids[index] ?? '';
      return stored(id, experiment, null, shelfById.get(id));
    });
  }

  /** Puts an experiment away, or back into the list with null. */
  async putAway(id: string, deletedAt: string | null): Promise<void> {
    const transaction = this.database.transaction('shelf', 'readwrite', DURABLE);
    const there = await transaction.store.get(id);
    await transaction.store.put({ id, revision: (there?.revision ?? 0) + 1, deletedAt });
    await transaction.done;
  }

  /** Takes an experiment out for good, with all that belongs to it. */
  async remove(id: string): Promise<void> {
    const transaction = this.database.transaction(
      ['experiments', 'histories', 'shelf'],
      'readwrite',
      DURABLE,
    );
    await Promise.all([
      transaction.objectStore('experiments').delete(id),
      transaction.objectStore('histories').delete(id),
      transaction.objectStore('shelf').delete(id),
      transaction.done,
    ]);
  }

  close(): void {
    this.database.close();
  }
}

function stored(
  id: string,
  experiment: unknown,
  history: unknown,
  shelf: ShelfRecord | undefined,
): StoredExperiment {
  return {
    id,
    experiment,
    history: history ?? null,
    revision: shelf?.revision ?? 0,
    deletedAt: shelf?.deletedAt ?? null,
  };
}
