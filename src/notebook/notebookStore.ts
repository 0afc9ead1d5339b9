import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { Experiment } from './experiment.ts';

interface NotebookSchema extends DBSchema {
  experiments: { key: string; value: Experiment };
  desk: { key: string; value: string };
}

const DATABASE = 'air-column-bench';
const VERSION = 1;
const OPEN_KEY = 'open';

/** Experiments kept in this browser. Every method rejects with a readable message where storage fails. */
export class NotebookStore {
  private constructor(private readonly database: IDBPDatabase<NotebookSchema>) {}

  /** Opens the store, making it on first use. */
  static async open(): Promise<NotebookStore> {
    const database = await openDB<NotebookSchema>(DATABASE, VERSION, {
      upgrade(fresh) {
        fresh.createObjectStore('experiments', { keyPath: 'id' });
        fresh.createObjectStore('desk');
      },
    });
    return new NotebookStore(database);
  }

  /** Puts the experiment in and notes that it is the open one, both or neither. */
  async save(experiment: Experiment): Promise<void> {
    const transaction = this.database.transaction(['experiments', 'desk'], 'readwrite');
    await Promise.all([
      transaction.objectStore('experiments').put(experiment),
      transaction.objectStore('desk').put(experiment.id, OPEN_KEY),
      transaction.done,
    ]);
  }

  /** The stored form of the experiment that was open last; null on a first visit. Check it before use. */
  async loadOpen(): Promise<unknown> {
    const id = await this.database.get('desk', OPEN_KEY);
    return id === undefined ? null : ((await this.database.get('experiments', id)) ?? null);
  }

  /** The stored form of one experiment; null where there is none. Check it before use. */
  async load(id: string): Promise<unknown> {
    return (await this.database.get('experiments', id)) ?? null;
  }

  /** Every stored experiment, the last changed first. */
  async list(): Promise<readonly Experiment[]> {
    const all = await this.database.getAll('experiments');
    return all.sort((one, other) => (one.changedAt > other.changedAt ? -1 : 1));
  }

  /** Takes one experiment out for good. */
  async remove(id: string): Promise<void> {
    await this.database.delete('experiments', id);
  }
}
