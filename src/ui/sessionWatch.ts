import type { ReactiveController } from 'lit';
import type { Session } from '../session/session.ts';
import type { Topic } from '../session/topics.ts';
import type { PartElement } from './parts/partElement.ts';

/**
 * Renders its element again when one of these topics of the session changes, while the element is on the page. What
 * throws on the way is shown in the element's place.
 */
export class SessionWatch implements ReactiveController {
  private unwatch: (() => void) | null = null;

  constructor(
    private readonly host: PartElement & { session: Session },
    private readonly topics: readonly Topic[],
    private readonly react: () => void = () => host.requestUpdate(),
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.unwatch = this.host.session.watch(this.topics, () => this.follow());
  }

  hostDisconnected(): void {
    this.unwatch?.();
    this.unwatch = null;
  }

  private follow(): void {
    try {
      this.react();
      if (this.host.hasFailed) this.host.requestUpdate();
    } catch (error) {
      this.host.fail(error, () => this.follow());
    }
  }
}
