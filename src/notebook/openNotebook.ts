import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { Experiment } from './experiment.ts';
import type { HistoryStep } from './history.ts';
import type { KeptSound } from './keptSound.ts';
import { notebookDatabase } from './notebookDatabase.ts';
import type { NotebookDatabase } from './notebookDatabase.ts';
import type { Taker } from './storageFault.ts';

/** Of the stores below: a new one raises it and adds a block to `upgrade`. */
const VERSION = 3;

type StoredSteps = readonly HistoryStep<Experiment>[];

/** Whether and how an experiment stands on the shelf. Absent for records of the first store: revision 0. */
export interface ShelfRecord {
  readonly id: string;
  /** Grows by one with every save, so that a tab notices what another one wrote. */
  readonly revision: number;
  /** When it was put away, ISO 8601; null while it stands in the list. */
  readonly deletedAt: string | null;
}

export interface NotebookSchema extends DBSchema {
  experiments: { key: string; value: Experiment };
  /** In one value, so that what many steps share is stored once. */
  histories: { key: string; value: { past: StoredSteps; future: StoredSteps } };
  shelf: { key: string; value: ShelfRecord };
  desk: { key: string; value: string };
  sounds: { key: string; value: KeptSound };
  /** Pieces of each sound, by its id and the frame they begin at. */
  soundPieces: { key: [string, number]; value: Int16Array<ArrayBuffer> };
}

/** Who takes a store away: a tab that erases everything, or the browser, as when site data are cleared. */
export type StoreTaker = Exclude<Taker, 'this tab'>;

/**
 * Opens the notebook's database, making it on first use and bringing an earlier one up to date.
 * @param scope  the path of this copy of the site
 * @param onGone  told when it is taken away while it is in use
 */
export async function openNotebook(
  scope: string,
  onGone: (by: StoreTaker) => void,
): Promise<{ readonly database: IDBPDatabase<NotebookSchema> } & Pick<NotebookDatabase, 'olderOf'>> {
  const { name, olderOf } = await openPatiently(() => notebookDatabase(scope));
  const database: IDBPDatabase<NotebookSchema> = await openPatiently(() =>
    openDB<NotebookSchema>(name, VERSION, {
      upgrade(fresh, oldVersion) {
        if (oldVersion < 1) {
          fresh.createObjectStore('experiments', { keyPath: 'id' });
          fresh.createObjectStore('desk');
        }
        if (oldVersion < 2) {
          fresh.createObjectStore('histories');
          fresh.createObjectStore('shelf', { keyPath: 'id' });
        }
        if (oldVersion < 3) {
          fresh.createObjectStore('sounds', { keyPath: 'id' });
          fresh.createObjectStore('soundPieces');
        }
      },
      // Another tab erases everything or brings a newer store: stand aside, else it waits for ever.
      blocking() {
        database.close();
        onGone('another tab');
      },
      terminated: () => onGone('the browser'),
    }),
  );
  return { database, olderOf };
}

/** How often and at what distance, ms, a store is asked for while the browser is still clearing the old one. */
const OPENINGS = 10;
const OPENING_PAUSE_MS = 150;

async function openPatiently<T>(open: () => Promise<T>): Promise<T> {
  for (let opening = 1; ; opening += 1) {
    try {
      return await open();
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'AbortError') || opening === OPENINGS)
        throw error;
      await new Promise((resolve) => setTimeout(resolve, OPENING_PAUSE_MS));
    }
  }
}
