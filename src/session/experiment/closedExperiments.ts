import type { Experiment } from '../../notebook/experiment.ts';
import type { History } from '../../notebook/history.ts';
import { StorageError } from '../../notebook/storageFault.ts';
import type { ExperimentHold } from './keepingOutside.ts';
import type { ReachedStore } from './reachedStore.ts';

/** What is done to experiments of the notebook that aren't open. Every method rejects with a StorageError. */
export class ClosedExperiments {
  /** @param hold  which tab works on what; null before the notebook was begun */
  constructor(
    private readonly reached: ReachedStore,
    private readonly hold: () => ExperimentHold | null,
  ) {}

  /** Keeps a new experiment without opening it. */
  async add(history: History<Experiment>): Promise<void> {
    await this.reached.must((store) => store.save(history, 0, false));
  }

  /** Changes an experiment. @returns false where another tab has it */
  change(id: string, change: (history: History<Experiment>) => History<Experiment>): Promise<boolean> {
    return this.whileFree(id, async () => {
      const there = await this.reached.load(id, false);
      if (there.kind === 'refused') throw new StorageError(there.fault);
      if (there.kind !== 'there') return;
      await this.reached.must((store) => store.save(change(there.history), there.revision, false));
    });
  }

  /** Puts an experiment away, or back with null. @returns false where another tab has it */
  putAway(id: string, deletedAt: string | null): Promise<boolean> {
    return this.whileFree(id, () => this.reached.must((store) => store.putAway(id, deletedAt)));
  }

  /** Takes an experiment out for good. @returns false where another tab has it */
  remove(id: string): Promise<boolean> {
    return this.whileFree(id, () => this.reached.must((store) => store.remove(id)));
  }

  private whileFree(id: string, action: () => Promise<void>): Promise<boolean> {
    return this.hold()?.whileFree(id, action) ?? Promise.resolve(false);
  }
}
