import { scopedName } from './siteScope.ts';

/** What one tab hears of the others. */
export interface TabHandlers {
  /** Another tab asks for the experiment: finish writing; it is released when this settles. */
  onHandOver(): Promise<void>;
  /** Another tab has taken the experiment. */
  onLost(): void;
  /** The tab that had it is gone: it is this one's now. */
  onGained(): void;
  /** Another tab saved this experiment. */
  onSaved(id: string): void;
}

type TabMessage = { readonly kind: 'hand-over' | 'saved'; readonly id: string };

/** How long a tab that is just going, as on a reload, is waited for, ms. */
const GRACE_MS = 400;
/** How long the other tab has for its last write before the experiment is taken from it, ms. */
const HAND_OVER_MS = 1500;

/**
 * Sees to it that one tab at a time works on an experiment: a Web Lock each, which the browser frees when its tab
 * is gone for whatever reason. Where there are none (plain http, storage refused) every tab gets it, and the store's revisions are
 * what keeps tabs from overwriting each other.
 */
export class TabHold {
  private id: string | null = null;
  /** Ends the present hold, or the wait for it. */
  private letGo: () => void = () => undefined;
  private readonly channel: BroadcastChannel | null;
  private readonly name: string;

  /** @param scope  the path of this copy of the site */
  constructor(
    private readonly handlers: TabHandlers,
    scope: string,
  ) {
    this.name = scopedName('air-column-bench', scope);
    this.channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(this.name);
    this.channel?.addEventListener(
      'message',
      (event: MessageEvent<TabMessage>) => void this.hear(event.data),
    );
  }

  /**
   * Lets go of the experiment before and asks for this one. Where another tab has it, goes on waiting for it.
   * @returns whether this tab has it
   */
  async hold(id: string): Promise<boolean> {
    this.release();
    this.id = id;
    return this.request(id, GRACE_MS, false);
  }

  /** Takes the present experiment from the tab that has it, after its last write. */
  async takeOver(): Promise<void> {
    const { id } = this;
    if (id === null) return;
    this.letGo();
    this.post({ kind: 'hand-over', id });
    if (await this.request(id, HAND_OVER_MS, false)) return;
    this.letGo();
    await this.request(id, HAND_OVER_MS, true);
  }

  /** Lets go, or stops waiting. */
  release(): void {
    this.id = null;
    this.letGo();
  }

  /**
   * Does something to an experiment that no tab has open.
   * @returns false, with nothing done, where another tab has it
   */
  async whileFree(id: string, action: () => Promise<void>): Promise<boolean> {
    const locks = (navigator as Partial<Navigator>).locks;
    if (locks === undefined || id === this.id) {
      await action();
      return true;
    }
    return locks.request(this.lockName(id), { ifAvailable: true }, async (lock) => {
      if (lock !== null) await action();
      return lock !== null;
    });
  }

  /** Tells the other tabs that this experiment was saved. */
  saved(id: string): void {
    this.post({ kind: 'saved', id });
  }

  private async hear(message: TabMessage): Promise<void> {
    if (message.kind === 'saved') this.handlers.onSaved(message.id);
    if (message.kind !== 'hand-over' || message.id !== this.id) return;
    await this.handlers.onHandOver();
    const { id } = this;
    this.letGo();
    // Waits again, behind the tab that asked.
    if (id !== null) void this.request(id, 0, false);
  }

  private post(message: TabMessage): void {
    this.channel?.postMessage(message);
  }

  /** Settles with true when the lock is held, with false after `waitMs` of waiting; the wait then goes on. */
  private request(id: string, waitMs: number, steal: boolean): Promise<boolean> {
    const locks = (navigator as Partial<Navigator>).locks;
    if (locks === undefined) return Promise.resolve(true);
    return new Promise((settle) => {
      const abort = new AbortController();
      let isOver = false;
      let isLate = false;
      let wasHeld = false;
      const grace = setTimeout(() => {
        isLate = true;
        settle(false);
      }, waitMs);
      const held = new Promise<void>((release) => {
        this.letGo = () => {
          isOver = true;
          abort.abort();
          release();
        };
      });
      const onGranted = (): Promise<void> => {
        clearTimeout(grace);
        if (isOver) return Promise.resolve();
        wasHeld = true;
        if (isLate) this.handlers.onGained();
        else settle(true);
        return held;
      };
      const options = steal ? { steal } : { signal: abort.signal };
      locks.request(this.lockName(id), options, onGranted).catch(() => {
        clearTimeout(grace);
        // Let go: nobody waits any more. Held: another tab took it. Neither: this browser gives no locks here.
        if (!isOver && wasHeld) this.handlers.onLost();
        settle(!isOver && !wasHeld);
      });
    });
  }

  private lockName(id: string): string {
    return `${this.name}:${id}`;
  }
}
