import { deleteDB } from 'idb';
import type { IDBPDatabase } from 'idb';
import type { Experiment } from './experiment.ts';
import type { History } from './history.ts';
import type { KeptSound } from './keptSound.ts';
import { notebookDatabase } from './notebookDatabase.ts';
import type { NotebookDatabase } from './notebookDatabase.ts';
import { openNotebook } from './openNotebook.ts';
import type { NotebookSchema, ShelfRecord, StoreTaker } from './openNotebook.ts';
import { ConflictError } from './storageFault.ts';

/** One experiment as it lies in the store: check it before use. */
export interface StoredExperiment {
  readonly id: string;
  readonly experiment: unknown;
  /** Null where none was kept or asked for. */
  readonly history: unknown;
  readonly revision: number;
  readonly deletedAt: string | null;
}

const OPEN_KEY = 'open';
/** On the disk when it is called saved, not only handed to the system. */
const DURABLE = { durability: 'strict' } as const;

/** Experiments kept in this browser. Every method rejects where storage fails: `storageFault` names the fault. */
export class NotebookStore {
  private constructor(
    private readonly database: IDBPDatabase<NotebookSchema>,
    /** Whose the older notebook in this browser is; null where there is none beside this one. */
    readonly olderOf: NotebookDatabase['olderOf'],
  ) {}

  /**
   * Opens the store, making it on first use and bringing an earlier one up to date.
   * @param scope  the path of this copy of the site
   * @param onGone  told when the store is taken away while it is in use
   */
  static async open(
    scope: string,
    onGone: (by: StoreTaker) => void = () => undefined,
  ): Promise<NotebookStore> {
    const { database, olderOf } = await openNotebook(scope, onGone);
    return new NotebookStore(database, olderOf);
  }

  /** Erases the whole store of the copy of the site at this path, other tabs' included. */
  static async erase(scope: string): Promise<void> {
    await deleteDB((await notebookDatabase(scope)).name);
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
    const shelf = quiet(transaction).objectStore('shelf');
    const there = await shelf.get(present.id);
    if (there !== undefined && there.revision !== afterRevision) {
      transaction.abort();
      await transaction.done.catch(() => undefined);
      throw new ConflictError();
    }
    const revision = afterRevision + 1;
    await done(transaction.done, [
      transaction.objectStore('experiments').put(present),
      transaction.objectStore('histories').put({ past, future }, present.id),
      shelf.put({ id: present.id, revision, deletedAt: null }),
      isOpen ? transaction.objectStore('desk').put(present.id, OPEN_KEY) : null,
    ]);
    return { revision, wasGone: there === undefined && afterRevision > 0 };
  }

  /** One experiment with its steps; null where there is none. What the browser can't give of it is undefined. */
  async load(id: string): Promise<StoredExperiment | null> {
    try {
      const transaction = quiet(this.database.transaction(['experiments', 'histories', 'shelf']));
      const [experiment, history, shelf] = await Promise.all([
        transaction.objectStore('experiments').get(id),
        transaction.objectStore('histories').get(id),
        transaction.objectStore('shelf').get(id),
      ]);
      return experiment === undefined ? null : stored(id, experiment, history, shelf);
    } catch (error) {
      // Where the store itself is at fault this rejects, too.
      const ids = await quiet(this.database.transaction('experiments')).store.getAllKeys();
      if (!ids.includes(id)) throw error;
      return stored(id, undefined, null, undefined);
    }
  }

  /** Id of the experiment that was open last, in whatever tab; null on a first visit. */
  async openId(): Promise<string | null> {
    return (await quiet(this.database.transaction('desk')).store.get(OPEN_KEY)) ?? null;
  }

  /** Notes which experiment the next visit begins with. */
  async noteOpen(id: string): Promise<void> {
    const transaction = this.database.transaction('desk', 'readwrite');
    await done(transaction.done, [transaction.store.put(id, OPEN_KEY)]);
  }

  /** Every experiment, put away or not, without its steps. What the browser can't give of one is undefined. */
  async list(): Promise<readonly StoredExperiment[]> {
    const transaction = quiet(this.database.transaction(['experiments', 'shelf']));
    const [ids, shelf] = await Promise.all([
      transaction.objectStore('experiments').getAllKeys(),
      transaction.objectStore('shelf').getAll(),
    ]);
    const experiments = await this.all(ids);
    const shelfById = new Map(shelf.map((record) => [record.id, record]));
    return ids.map((id) => stored(id, experiments.get(id), null, shelfById.get(id)));
  }

  /** All at once, or one by one where one of them would hide the others. */
  private async all(ids: readonly string[]): Promise<ReadonlyMap<string, unknown>> {
    const found = new Map<string, unknown>();
    try {
      const all = await quiet(this.database.transaction('experiments')).store.getAll();
      for (const experiment of all) found.set(experiment.id, experiment);
    } catch {
      for (const id of ids) found.set(id, await this.one(id));
    }
    return found;
  }

  private async one(id: string): Promise<unknown> {
    try {
      return await quiet(this.database.transaction('experiments')).store.get(id);
    } catch {
      return undefined;
    }
  }

  /** Puts an experiment away, or back into the list with null. */
  async putAway(id: string, deletedAt: string | null): Promise<void> {
    const transaction = this.database.transaction('shelf', 'readwrite', DURABLE);
    const there = await quiet(transaction).store.get(id);
    const shelved = { id, revision: (there?.revision ?? 0) + 1, deletedAt };
    await done(transaction.done, [transaction.store.put(shelved)]);
  }

  /** Takes an experiment out for good, with all that belongs to it. */
  async remove(id: string): Promise<void> {
    for (const sound of await this.listSounds()) {
      if (sound.experimentId === id) await this.removeSound(sound.id);
    }
    const transaction = this.database.transaction(
      ['experiments', 'histories', 'shelf'],
      'readwrite',
      DURABLE,
    );
    await done(transaction.done, [
      transaction.objectStore('experiments').delete(id),
      transaction.objectStore('histories').delete(id),
      transaction.objectStore('shelf').delete(id),
    ]);
  }

  /**
   * Puts a piece of a sound in together with what is known of the sound, both or neither.
   * @param startFrame  of the piece within the sound
   * @param samples  empty where only the facts changed
   */
  async addSoundPiece(sound: KeptSound, startFrame: number, samples: Int16Array<ArrayBuffer>): Promise<void> {
    const transaction = this.database.transaction(['sounds', 'soundPieces'], 'readwrite');
    await done(transaction.done, [
      transaction.objectStore('sounds').put(sound),
      samples.length === 0
        ? null
        : transaction.objectStore('soundPieces').put(samples, [sound.id, startFrame]),
    ]);
  }

  /** Every kept sound, of all experiments. */
  async listSounds(): Promise<readonly KeptSound[]> {
    return quiet(this.database.transaction('sounds')).store.getAll();
  }

  /** The samples of a sound; a piece that is missing is silence. */
  async loadSamples(sound: KeptSound): Promise<Int16Array<ArrayBuffer>> {
    const samples = new Int16Array(sound.frameCount);
    const pieces = quiet(this.database.transaction('soundPieces')).store.iterate(piecesOf(sound.id));
    for await (const { key, value } of pieces) {
      samples.set(value.subarray(0, Math.max(0, sound.frameCount - key[1])), key[1]);
    }
    return samples;
  }

  async removeSound(id: string): Promise<void> {
    const transaction = this.database.transaction(['sounds', 'soundPieces'], 'readwrite', DURABLE);
    await done(transaction.done, [
      transaction.objectStore('sounds').delete(id),
      transaction.objectStore('soundPieces').delete(piecesOf(id)),
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

/** A transaction whose end nobody waits for: its requests say what failed, and its end needn't say it again. */
function quiet<T extends { readonly done: Promise<void> }>(transaction: T): T {
  transaction.done.catch(() => undefined);
  return transaction;
}

/**
 * Waits for a transaction. Where it fails, its own reason counts (such as a full disk): each of its requests only
 * says that it was aborted.
 */
async function done(
  transaction: Promise<void>,
  requests: readonly (Promise<unknown> | null)[],
): Promise<void> {
  const [outcome] = await Promise.allSettled([transaction, ...requests]);
  if (outcome.status === 'rejected') throw outcome.reason;
}

function piecesOf(soundId: string): IDBKeyRange {
  return IDBKeyRange.bound([soundId, 0], [soundId, Number.MAX_SAFE_INTEGER]);
}
