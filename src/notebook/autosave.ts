import type { Experiment } from './experiment.ts';

/** What the page says about saving. */
export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'refused'; readonly message: string };

/**
 * Saves each change at once, one write at a time. While a write runs only the newest state waits, so a
 * burst of changes costs two writes and the last one always lands.
 */
export class Autosave {
  private waiting: Experiment | null = null;
  private writing = false;

  /**
   * @param write  puts one experiment into the store, whole or not at all
   * @param onState  told of every change of state
   */
  constructor(
    private readonly write: (experiment: Experiment) => Promise<void>,
    private readonly onState: (state: SaveState) => void,
  ) {}

  /** Saves this state as soon as the write before has ended. Never throws; a failure arrives as a state. */
  save(experiment: Experiment): void {
    this.waiting = experiment;
    if (!this.writing) void this.drain();
  }

  private async drain(): Promise<void> {
    this.writing = true;
    this.onState({ kind: 'saving' });
    let failure: string | null = null;
    while (this.waiting !== null) {
      const next: Experiment = this.waiting;
      this.waiting = null;
      try {
        await this.write(next);
        failure = null;
      } catch (error) {
        failure = error instanceof Error ? error.message : String(error);
      }
    }
    this.writing = false;
    this.onState(failure === null ? { kind: 'saved' } : { kind: 'refused', message: failure });
  }
}
