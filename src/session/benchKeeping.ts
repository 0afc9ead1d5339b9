import { Autosave } from '../notebook/autosave.ts';
import type { SaveState } from '../notebook/autosave.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { beginHistory } from '../notebook/history.ts';
import type { History } from '../notebook/history.ts';
import type { KeptSound } from '../notebook/keptSound.ts';
import type { StoredExperiment, StoreTaker } from '../notebook/notebookStore.ts';
import { readExperiment } from '../notebook/readExperiment.ts';
import type { ReadItems } from '../notebook/readExperiment.ts';
import { readHistory } from '../notebook/readHistory.ts';
import { ConflictError, GoneError, storageFault } from '../notebook/storageFault.ts';
import type { TabHandlers } from '../notebook/tabHold.ts';
import type { Tell } from './notice.ts';

/** The part of the notebook's store that holds sound. */
export interface SoundStore {
  addSoundPiece(sound: KeptSound, startFrame: number, samples: Int16Array<ArrayBuffer>): Promise<void>;
  listSounds(): Promise<readonly KeptSound[]>;
  loadSamples(sound: KeptSound): Promise<Int16Array<ArrayBuffer>>;
  removeSound(id: string): Promise<void>;
}

/** The part of the notebook's store that the bench uses. */
export interface BenchStore extends SoundStore {
  save(
    history: History<Experiment>,
    afterRevision: number,
    isOpen: boolean,
  ): Promise<{ revision: number; wasGone: boolean }>;
  load(id: string): Promise<StoredExperiment | null>;
  openId(): Promise<string | null>;
  list(): Promise<readonly StoredExperiment[]>;
  putAway(id: string, deletedAt: string | null): Promise<void>;
  remove(id: string): Promise<void>;
  close(): void;
}

/** Which tab works on an experiment. */
export interface BenchHold {
  hold(id: string): Promise<boolean>;
  takeOver(): Promise<void>;
  saved(id: string): void;
  whileFree(id: string, action: () => Promise<void>): Promise<boolean>;
}

export interface KeepingOutside {
  /** @param onGone  told when the store is taken away while it is in use */
  openStore(onGone: (by: StoreTaker) => void): Promise<BenchStore>;
  createHold(handlers: TabHandlers): BenchHold;
  /** The experiment that this tab had open before it was loaded anew; null for a new tab. */
  readonly tabMemory: { get(): string | null; set(id: string): void };
}

export interface KeepingHandlers {
  /** Another state of the open experiment, or another experiment, takes the place of what is shown. */
  onHistory(history: History<Experiment>): void;
  /** Before another tab gets the experiment: end what still adds to it. */
  onHandOver(): void;
  /** What is said about saving or about other tabs has changed. */
  onChange(): void;
  tell: Tell;
}

/**
 * `own`: this tab works on the experiment. `elsewhere`: another tab does, this one follows it and changes nothing.
 * `apart`: another tab saved something else meanwhile; what this tab holds is in its memory only.
 */
export type TabAccess = 'own' | 'elsewhere' | 'apart';

/** Keeps the open experiment in the notebook, and this tab out of the way of others. */
export class BenchKeeping {
  saveState: SaveState = { kind: 'saved' };
  access: TabAccess = 'own';
  private store: BenchStore | null = null;
  private hold: BenchHold | null = null;
  private revision = 0;
  private history: History<Experiment> | null = null;
  private readonly autosave = new Autosave<History<Experiment>>(
    (history) => this.write(history),
    (state) => this.setSaveState(state),
  );

  constructor(
    private readonly outside: KeepingOutside,
    private readonly handlers: KeepingHandlers,
  ) {}

  /** Opens the notebook and what was open last. Never rejects: without storage the bench still works. */
  async begin(fresh: History<Experiment>): Promise<void> {
    this.history = fresh;
    this.hold = this.outside.createHold({
      onHandOver: () => this.handOver(),
      onLost: () => this.lose(),
      onGained: () => void this.gain(),
      onSaved: (id) => void this.follow(id),
    });
    try {
      this.store = await this.openStore();
      // What was done while the store opened counts; what is stored stays in the list.
      if (this.history !== fresh) {
        this.autosave.save(this.history);
        await this.holdOpen();
        return;
      }
      const id = this.outside.tabMemory.get() ?? (await this.store.openId());
      const stored = id === null ? null : await this.store.load(id);
      if (stored !== null && stored.deletedAt === null) {
        const history = readStored(stored);
        if ('faults' in history) {
          this.handlers.tell(
            'problem',
            `The last experiment couldn’t be read: ${history.faults.at(0) ?? ''} It is kept as it is, under Records.`,
          );
        } else if (this.history === fresh) {
          await this.show(history, stored.revision);
          return;
        }
      }
    } catch (error) {
      this.refuse(error);
    }
    await this.holdOpen();
  }

  /** Where sound is kept; null while nothing can be stored. */
  get sounds(): SoundStore | null {
    return this.store;
  }

  /** Keeps a new state of the open experiment. */
  save(history: History<Experiment>): void {
    this.history = history;
    if (this.access === 'own' && this.store !== null) this.autosave.save(history);
  }

  /** Settles when all is written that was given so far. */
  idle(): Promise<void> {
    return this.autosave.idle();
  }

  /** Tries once more to keep the open experiment, with a store opened anew. */
  async tryAgain(): Promise<void> {
    try {
      this.store = await this.openStore();
    } catch (error) {
      this.refuse(error);
      return;
    }
    if (this.history !== null) this.save(this.history);
  }

  /** Writes what waits and keeps nothing from then on: before everything is erased. */
  async stop(): Promise<void> {
    await this.autosave.idle();
    this.store?.close();
    this.store = null;
  }

  /** What is stored under this id, read; null where there is nothing that can be read. */
  async load(id: string): Promise<{ history: History<Experiment>; revision: number } | null> {
    const stored = (await this.store?.load(id)) ?? null;
    if (stored === null || stored.deletedAt !== null) return null;
    const history = readStored(stored);
    return 'faults' in history ? null : { history, revision: stored.revision };
  }

  /** Everything in the notebook, the last changed first. Rejects where storage fails. */
  async list(): Promise<readonly StoredExperiment[]> {
    return (await this.store?.list()) ?? [];
  }

  /** Makes this the open experiment. @param revision  of the stored state that it follows; 0: it is new */
  async show(history: History<Experiment>, revision: number): Promise<void> {
    await this.autosave.idle();
    this.history = history;
    this.revision = revision;
    this.access = 'own';
    this.handlers.onHistory(history);
    await this.holdOpen();
  }

  /** Takes the open experiment from the tab that works on it, with all that it saved. */
  async takeOver(): Promise<void> {
    await this.hold?.takeOver();
    await this.gain();
  }

  /** Keeps a new experiment without opening it. Rejects where storage fails. */
  async keepBeside(history: History<Experiment>): Promise<void> {
    await this.store?.save(history, 0, false);
  }

  /** Changes an experiment that isn't open. @returns false where another tab has it. Rejects where storage fails. */
  changeClosed(id: string, change: (history: History<Experiment>) => History<Experiment>): Promise<boolean> {
    return this.whileFree(id, async () => {
      const there = await this.load(id);
      if (there !== null) await this.store?.save(change(there.history), there.revision, false);
    });
  }

  /** Puts an experiment away, or back. @returns false where another tab has it. Rejects where storage fails. */
  async putAway(id: string, deletedAt: string | null): Promise<boolean> {
    await this.autosave.idle();
    return this.whileFree(id, async () => {
      await this.store?.putAway(id, deletedAt);
    });
  }

  /** Takes an experiment out for good. Rejects where storage fails. */
  async remove(id: string): Promise<void> {
    await this.store?.remove(id);
  }

  private whileFree(id: string, action: () => Promise<void>): Promise<boolean> {
    return this.hold?.whileFree(id, action) ?? Promise.resolve(false);
  }

  private async openStore(): Promise<BenchStore> {
    return this.outside.openStore((by) => {
      this.refuse(new GoneError(by));
      // What the browser cleared comes back as far as this tab holds it; what a person erased in another tab doesn't.
      if (by === 'the browser') void this.tryAgain();
    });
  }

  private async write(history: History<Experiment>): Promise<void> {
    if (this.store === null) return;
    // A burst may span the opening of another experiment: each state goes to its own.
    if (history.present.id !== this.history?.present.id) return;
    try {
      const { revision, wasGone } = await this.store.save(history, this.revision, true);
      this.revision = revision;
      this.outside.tabMemory.set(history.present.id);
      this.hold?.saved(history.present.id);
      if (wasGone) {
        this.handlers.tell(
          'problem',
          'What this browser had stored for the page was erased. The open experiment is saved again; others and kept sound are gone from this device.',
        );
      }
    } catch (error) {
      if (error instanceof ConflictError) this.setAccess('apart');
      throw error;
    }
  }

  private async holdOpen(): Promise<void> {
    const id = this.history?.present.id;
    if (id === undefined || this.hold === null) return;
    const isOwn = await this.hold.hold(id);
    if (id === this.history?.present.id) this.setAccess(isOwn ? 'own' : 'elsewhere');
  }

  private async handOver(): Promise<void> {
    if (this.access !== 'own') return;
    this.handlers.onHandOver();
    await this.autosave.idle();
    this.lose();
  }

  private lose(): void {
    if (this.access !== 'own') return;
    this.handlers.onHandOver();
    this.setAccess('elsewhere');
    this.handlers.tell('problem', 'This experiment is now worked on in another tab; this one only shows it.');
  }

  /** The experiment is this tab's: what was saved last counts. */
  private async gain(): Promise<void> {
    if (await this.reload()) this.setAccess('own');
  }

  private async follow(id: string): Promise<void> {
    if (this.access === 'elsewhere' && id === this.history?.present.id) await this.reload();
  }

  private async reload(): Promise<boolean> {
    const id = this.history?.present.id;
    if (id === undefined) return false;
    try {
      const loaded = await this.load(id);
      if (id !== this.history?.present.id) return false;
      if (loaded === null) return true;
      this.history = loaded.history;
      this.revision = loaded.revision;
      this.handlers.onHistory(loaded.history);
      return true;
    } catch (error) {
      this.refuse(error);
      return false;
    }
  }

  private refuse(error: unknown): void {
    const { kind, message } = storageFault(error);
    this.store = null;
    this.setSaveState({ kind: 'refused', fault: kind, message });
  }

  private setAccess(access: TabAccess): void {
    if (access === this.access) return;
    this.access = access;
    this.handlers.onChange();
  }

  private setSaveState(state: SaveState): void {
    this.saveState = state;
    this.handlers.onChange();
  }
}

function readStored(stored: StoredExperiment): History<Experiment> | { readonly faults: readonly string[] } {
  const readItems: ReadItems = new WeakMap();
  const reading = readExperiment(stored.experiment, readItems);
  if (reading.kind === 'faults') return { faults: reading.faults };
  return stored.history === null
    ? beginHistory(reading.experiment)
    : readHistory(stored.history, reading.experiment, readItems);
}
