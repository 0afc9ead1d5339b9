import type { Experiment } from '../../../src/notebook/experiment.ts';
import type { History } from '../../../src/notebook/history.ts';
import type { KeptSound } from '../../../src/notebook/keptSound.ts';
import type { StoredExperiment } from '../../../src/notebook/notebookStore.ts';
import { ConflictError } from '../../../src/notebook/storageFault.ts';
import type { ExperimentHold, ExperimentStore } from '../../../src/session/experiment/keeping.ts';

/** The notebook's store in memory, values copied on the way in and out as the browser does. */
export class MemoryStore implements ExperimentStore {
  private readonly records = new Map<string, StoredExperiment>();
  private readonly sounds = new Map<
    string,
    { sound: KeptSound; pieces: { startFrame: number; samples: Int16Array }[] }
  >();
  private lastId: string | null = null;
  readonly olderOf = null;

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

  noteOpen(id: string): Promise<void> {
    this.lastId = id;
    return Promise.resolve();
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

  addSoundPiece(sound: KeptSound, startFrame: number, samples: Int16Array): Promise<void> {
    const pieces = this.sounds.get(sound.id)?.pieces ?? [];
    this.sounds.set(sound.id, { sound, pieces: [...pieces, { startFrame, samples }] });
    return Promise.resolve();
  }

  listSounds(): Promise<readonly KeptSound[]> {
    return Promise.resolve([...this.sounds.values()].map(({ sound }) => sound));
  }

  loadSamples(sound: KeptSound): Promise<Int16Array<ArrayBuffer>> {
    const samples = new Int16Array(sound.frameCount);
    for (const piece of this.sounds.get(sound.id)?.pieces ?? []) samples.set(piece.samples, piece.startFrame);
    return Promise.resolve(samples);
  }

  removeSound(id: string): Promise<void> {
    this.sounds.delete(id);
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
export const freeHold: ExperimentHold = {
  hold: () => Promise.resolve(true),
  takeOver: () => Promise.resolve(),
  saved: () => undefined,
  whileFree: async (_id, action) => {
    await action();
    return true;
  },
};
