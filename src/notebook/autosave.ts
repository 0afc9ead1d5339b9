import type { StorageFault } from './storageFault.ts';
import { throwLater } from './throwLater.ts';

/**
 * What the page says about saving. `nothing`: nothing was entered yet that could be lost. `saved`: the state that is
 * shown is the state in the store.
 */
export type SaveState =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'refused'; readonly fault: StorageFault['kind']; readonly why: StorageFault };

/** What became of one write. There is no third: what was skipped wasn't written. */
export type SaveOutcome =
  { readonly kind: 'written' } | { readonly kind: 'refused'; readonly fault: StorageFault };

/**
 * Saves each change at once, one write at a time. While a write runs only the newest state of each thing waits, so a
 * burst of changes costs two writes and the last one always lands.
 */
export class Autosave<T> {
  private readonly waiting = new Map<unknown, T>();
  private drained: Promise<void> | null = null;

  /**
   * @param write  puts one state into the store, whole or not at all
   * @param keyOf  what a state is a state of: the newest of each is written
   * @param onState  told of every change of state, with a state of the thing that it is about
   */
  constructor(
    private readonly write: (state: T) => Promise<SaveOutcome>,
    private readonly keyOf: (state: T) => unknown,
    private readonly onState: (saveState: SaveState, of: T) => void,
  ) {}

  /** Saves this state as soon as the write before has ended. Never throws; a failure arrives as a state. */
  save(state: T): void {
    this.waiting.set(this.keyOf(state), state);
    this.onState({ kind: 'saving' }, state);
    this.drained ??= this.drain();
  }

  /** Settles when all that was given has been written or refused. */
  async idle(): Promise<void> {
    while (this.drained !== null) await this.drained;
  }

  private async drain(): Promise<void> {
    try {
      for (let next = this.take(); next !== null; next = this.take()) {
        const outcome = await this.writeNow(next);
        if (!this.waiting.has(this.keyOf(next))) this.onState(stateAfter(outcome), next);
      }
    } finally {
      this.drained = null;
    }
  }

  private async writeNow(state: T): Promise<SaveOutcome> {
    try {
      return await this.write(state);
    } catch (error) {
      // Not the storage's doing: it goes to whoever looks into faults of the page, and it wasn't saved.
      throwLater(error);
      return {
        kind: 'refused',
        fault: { kind: 'broken', why: 'page' },
      };
    }
  }

  private take(): T | null {
    for (const [key, state] of this.waiting) {
      this.waiting.delete(key);
      return state;
    }
    return null;
  }
}

function stateAfter(outcome: SaveOutcome): SaveState {
  return outcome.kind === 'written'
    ? { kind: 'saved' }
    : { kind: 'refused', fault: outcome.fault.kind, why: outcome.fault };
}
