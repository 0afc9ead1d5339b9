import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { words } from '../words/inUse.ts';

/** The same fault again within this time is the same news, ms: a fault may come with every block of sound. */
const SAME_NEWS_MS = 10_000;

/**
 * What nothing else catches: handlers of events that throw, promises that nobody waits for. The browser puts them on
 * its console; this tells the person.
 */
export class PageFaults implements ReactiveController {
  private lastFault = '';
  private lastMs = -Infinity;

  /** @param tell  shows a message to the person */
  constructor(
    host: ReactiveControllerHost,
    private readonly tell: (message: string) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('error', this.onError);
    addEventListener('unhandledrejection', this.onRejection);
  }

  hostDisconnected(): void {
    removeEventListener('error', this.onError);
    removeEventListener('unhandledrejection', this.onRejection);
  }

  private readonly onError = (event: ErrorEvent): void => {
    // Scripts of the browser's own extensions, and remarks such as that of a ResizeObserver, come without an error.
    if (event.error !== null && event.error !== undefined) this.take(event.error);
  };

  private readonly onRejection = (event: PromiseRejectionEvent): void => this.take(event.reason);

  private take(error: unknown): void {
    const fault = String(error);
    const nowMs = performance.now();
    const isNews = fault !== this.lastFault || nowMs - this.lastMs > SAME_NEWS_MS;
    this.lastFault = fault;
    this.lastMs = nowMs;
    if (isNews) this.tell(isMissingScript(error) ? words.pageFault.view : words.pageFault.action);
  }
}

/** Whether a part of the site that is loaded when it is needed didn't come; each browser has its own words. */
function isMissingScript(error: unknown): boolean {
  return (
    error instanceof TypeError &&
    /dynamically imported module|importing a module script|module script failed/i.test(error.message)
  );
}
