/** A clock that a test moves on. */
export class ManualClock {
  private timeMs = 0;
  private readonly timers = new Set<{
    readonly everyMs: number;
    nextMs: number;
    readonly callback: () => void;
  }>();

  readonly now = (): number => this.timeMs;

  readonly every = (everyMs: number, callback: () => void): (() => void) => {
    const timer = { everyMs, nextMs: this.timeMs + everyMs, callback };
    this.timers.add(timer);
    return () => this.timers.delete(timer);
  };

  /** Timers that have not been ended. */
  get waiting(): number {
    return this.timers.size;
  }

  /** Time passes and no timer runs: the machine is asleep. They go on from there. */
  jump(ms: number): void {
    this.timeMs += ms;
    for (const timer of this.timers) timer.nextMs += ms;
  }

  /** Time passes and every timer runs when it is due. */
  pass(ms: number): void {
    const end = this.timeMs + ms;
    for (;;) {
      const due = [...this.timers]
        .filter((timer) => timer.nextMs <= end)
        .sort((a, b) => a.nextMs - b.nextMs)[0];
      if (due === undefined) break;
      this.timeMs = Math.max(this.timeMs, due.nextMs);
      due.nextMs += due.everyMs;
      due.callback();
    }
    this.timeMs = end;
  }

  /** Time passes while no timer runs, as when the machine sleeps. */
  sleep(ms: number): void {
    this.timeMs += ms;
    for (const timer of this.timers) timer.nextMs = this.timeMs + timer.everyMs;
  }
}
