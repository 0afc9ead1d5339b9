import { storageFault } from './storageFault.ts';
import type { StorageFault } from './storageFault.ts';

/** What the page says about saving. */
export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'refused'; readonly fault: StorageFault['kind']; readonly message: string };

/**
 * Saves each change at once, one write at a time. While a write runs only the newest state waits, so a
 * burst of changes costs two writes and the last one always lands.
 */
export class Autosave<T> {
  private waiting: T | null = null;
  private drained: Promise<void> | null = null;

  /**
   * @param write  puts one state into the store, whole or not at all
   * @param onState  told of every change of state
   */
  constructor(
    private readonly write: (state: T) => Promise<void>,
    private readonly onState: (state: SaveState) => void,
  ) {}

  /** Saves this state as soon as the write before has ended. Never throws; a failure arrives as a state. */
  save(state: T): void {
    this.waiting = state;
    this.drained ??= this.drain();
  }

  /** Settles when all that was given has been written or refused. */
  async idle(): Promise<void> {
    while (this.drained !== null) await this.drained;
  }

  private async drain(): Promise<void> {
    this.onState({ kind: 'saving' });
    let failure: StorageFault | null = null;
    while (this.waiting !== null) {
      const next: T = this.waiting;
      this.waiting = null;
      try {
        await this.write(next);
        failure = null;
      } catch (error) {
        failure = storageFault(error);
      }
    }
    this.drained = null;
    this.onState(
      failure === null
        ? { kind: 'saved' }
        : { kind: 'refused', fault: failure.kind, message: failure.message },
    );
  }
}
