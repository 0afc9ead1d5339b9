import { trustedAddress } from './trustedAddress.ts';

/** Whether the site works without a network, and whether a newer one waits. */
export type SiteState = 'online only' | 'offline ready' | 'update waits';

/** How often a page that stays open asks for a newer version, ms. */
const ASK_MS = 60 * 60 * 1000;

/**
 * Keeps the site for use without a network and notices newer versions. They are offered, never forced: a new
 * version waits until the person takes it or every tab of the bench is closed.
 */
export class SiteUpdates {
  state: SiteState = 'online only';
  private registration: ServiceWorkerRegistration | null = null;
  private isTaking = false;

  /** @param onState  told of every change of `state` */
  constructor(private readonly onState: () => void) {}

  /** Registers the service worker. Never rejects: where there is none the page works as before. */
  async begin(): Promise<void> {
    const workers = (navigator as Partial<Navigator>).serviceWorker;
    if (!import.meta.env.PROD || workers === undefined) return;
    try {
      const registration = await workers.register(trustedAddress('bench', 'service-worker.js'));
      this.registration = registration;
      registration.addEventListener('updatefound', () => this.watch(registration.installing));
      this.watch(registration.installing);
      workers.addEventListener('controllerchange', () => {
        if (this.isTaking) location.reload();
      });
      setInterval(() => void registration.update().catch(() => undefined), ASK_MS);
      this.look();
      await workers.ready;
      this.look();
    } catch {
      // Refused by a setting or a private window: the page then needs the network, and says so under Records.
    }
  }

  /**
   * Goes over to the version that waits, by loading the page anew.
   * @returns false where other tabs of the bench are open: they would lose the parts they have yet to load
   */
  async take(): Promise<boolean> {
    const waiting = this.registration?.waiting;
    if (!waiting) return true;
    this.isTaking = true;
    const channel = new MessageChannel();
    const isAlone = await new Promise<boolean>((resolve) => {
      channel.port1.onmessage = (event: MessageEvent<boolean>) => resolve(event.data);
      waiting.postMessage('take over', [channel.port2]);
    });
    if (!isAlone) this.isTaking = false;
    return isAlone;
  }

  private watch(worker: ServiceWorker | null): void {
    worker?.addEventListener('statechange', () => this.look());
  }

  private look(): void {
    const { registration } = this;
    const state =
      registration?.waiting && registration.active
        ? 'update waits'
        : registration?.active
          ? 'offline ready'
          : 'online only';
    if (state === this.state) return;
    this.state = state;
    this.onState();
  }
}
