import type { Experiment } from '../../notebook/experiment.ts';
import type { History } from '../../notebook/history.ts';
import type { KeptSound } from '../../notebook/keptSound.ts';
import type { WriteMended } from '../../notebook/mendRecord.ts';
import type { StoredExperiment } from '../../notebook/notebookStore.ts';
import type { StoreTaker } from '../../notebook/openNotebook.ts';
import type { TabHandlers } from '../../notebook/tabHold.ts';

/** The part of the notebook's store that holds sound. */
export interface SoundStore {
  addSoundPiece(sound: KeptSound, startFrame: number, samples: Int16Array<ArrayBuffer>): Promise<void>;
  listSounds(): Promise<readonly KeptSound[]>;
  loadSamples(sound: KeptSound): Promise<Int16Array<ArrayBuffer>>;
  removeSound(id: string): Promise<void>;
}

/** The part of the notebook's store that the bench uses. */
export interface ExperimentStore extends SoundStore {
  /** Whose the older notebook in this browser is; null where there is none beside this one. */
  readonly olderOf: { readonly path: string | null } | null;
  save(
    history: History<Experiment>,
    afterRevision: number,
    isOpen: boolean,
  ): Promise<{ revision: number; wasGone: boolean }>;
  load(id: string): Promise<StoredExperiment | null>;
  openId(): Promise<string | null>;
  noteOpen(id: string): Promise<void>;
  list(): Promise<readonly StoredExperiment[]>;
  putAway(id: string, deletedAt: string | null): Promise<void>;
  remove(id: string): Promise<void>;
  close(): void;
}

/** Which tab works on an experiment. */
export interface ExperimentHold {
  hold(id: string): Promise<boolean>;
  takeOver(): Promise<void>;
  saved(id: string): void;
  whileFree(id: string, action: () => Promise<void>): Promise<boolean>;
}

/** What keeping an experiment needs of the browser. */
export interface KeepingOutside {
  /** @param onGone  told when the store is taken away while it is in use */
  openStore(onGone: (by: StoreTaker) => void): Promise<ExperimentStore>;
  createHold(handlers: TabHandlers): ExperimentHold;
  /** Writes into one line what was brought into today's limits, for the note of an old record. */
  readonly writeMended: WriteMended;
  /** The experiment that this tab had open before it was loaded anew; null for a new tab. */
  readonly tabMemory: { get(): string | null; set(id: string): void };
}
