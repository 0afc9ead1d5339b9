import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Closes what stands over the page when the address leads elsewhere: a question belongs to where it was asked. */
export class ClosedByAddress implements ReactiveController {
  constructor(
    host: ReactiveControllerHost,
    private readonly close: () => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    // Before anything else follows the address: a question that this raises is a new one.
    addEventListener('hashchange', this.close, { capture: true });
  }

  hostDisconnected(): void {
    removeEventListener('hashchange', this.close, { capture: true });
  }
}
