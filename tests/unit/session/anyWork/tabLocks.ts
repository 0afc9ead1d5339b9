import type { TabHandlers } from '../../../../src/notebook/tabHold.ts';
import type { ExperimentHold } from '../../../../src/session/experiment/keeping.ts';

interface Holder {
  id: string | null;
  readonly handlers: TabHandlers;
}

/** Which tab works on which experiment, among the tabs of one browser: as `TabHold` does with the browser's locks. */
export class TabLocks {
  /** A hand-over is waited for in vain: the experiment is taken from the tab that has it. */
  isImpatient = false;
  /** Until then nobody who asks is told whose an experiment is. */
  answersFrom: Promise<void> = Promise.resolve();
  private readonly queues = new Map<string, Holder[]>();
  private holders: Holder[] = [];

  /** A new tab. @returns its hold, whether it has an experiment, and what happens when it is closed */
  enter(handlers: TabHandlers): {
    readonly hold: ExperimentHold;
    readonly has: (id: string) => boolean;
    readonly leave: () => void;
  } {
    const holder: Holder = { id: null, handlers };
    this.holders.push(holder);
    return {
      hold: {
        hold: async (id) => {
          const isOwn = this.ask(holder, id);
          await this.answersFrom;
          return isOwn || this.queue(id)[0] === holder;
        },
        takeOver: () => this.takeOver(holder),
        saved: (id) => this.tellSaved(holder, id),
        whileFree: async (id, action) => {
          const first = this.queue(id)[0];
          if (first !== undefined && first !== holder && id !== holder.id) return false;
          await action();
          return true;
        },
      },
      has: (id) => this.queue(id)[0] === holder,
      leave: () => {
        this.letGo(holder);
        this.holders = this.holders.filter((other) => other !== holder);
      },
    };
  }

  private ask(holder: Holder, id: string): boolean {
    this.letGo(holder);
    holder.id = id;
    this.queue(id).push(holder);
    return this.queue(id)[0] === holder;
  }

  private async takeOver(holder: Holder): Promise<void> {
    const { id } = holder;
    const owner = id === null ? undefined : this.queue(id)[0];
    if (id === null || owner === undefined || owner === holder) return;
    if (this.isImpatient) owner.handlers.onLost();
    else await owner.handlers.onHandOver();
    const others = this.queue(id).filter((other) => other !== holder && other !== owner);
    this.queues.set(id, [holder, ...others, owner]);
  }

  private letGo(holder: Holder): void {
    const { id } = holder;
    holder.id = null;
    if (id === null) return;
    const queue = this.queue(id);
    const wasFirst = queue[0] === holder;
    const rest = queue.filter((other) => other !== holder);
    this.queues.set(id, rest);
    if (wasFirst) rest[0]?.handlers.onGained();
  }

  private tellSaved(holder: Holder, id: string): void {
    for (const other of this.holders) {
      if (other !== holder) queueMicrotask(() => other.handlers.onSaved(id));
    }
  }

  private queue(id: string): Holder[] {
    const queue = this.queues.get(id) ?? [];
    this.queues.set(id, queue);
    return queue;
  }
}
