import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { BenchSession } from '../session/benchSession.ts';
import type { BenchTopic } from '../session/benchTopics.ts';

/** Renders its element again when one of these topics of the session changes, while the element is on the page. */
export class BenchWatch implements ReactiveController {
  private unwatch: (() => void) | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & { session: BenchSession },
    private readonly topics: readonly BenchTopic[],
    private readonly react: () => void = () => host.requestUpdate(),
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.unwatch = this.host.session.watch(this.topics, this.react);
  }

  hostDisconnected(): void {
    this.unwatch?.();
    this.unwatch = null;
  }
}
