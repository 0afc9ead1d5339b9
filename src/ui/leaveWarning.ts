import type { ReactiveController } from 'lit';
import type { BenchSession } from '../session/benchSession.ts';
import type { BenchElement } from './parts/benchElement.ts';
import { BenchWatch } from './benchWatch.ts';

/** Has the browser ask before the tab is closed or loaded anew, as long as work is in its memory only. */
export class LeaveWarning implements ReactiveController {
  constructor(private readonly host: BenchElement & { session: BenchSession }) {
    host.addController(this);
    new BenchWatch(host, ['keeping', 'notebook'], () => this.follow());
  }

  hostConnected(): void {
    this.follow();
  }

  hostDisconnected(): void {
    removeEventListener('beforeunload', askToStay);
  }

  /** Only while it is needed: such a listener keeps browsers from bringing the page back fast. */
  private follow(): void {
    if (this.host.session.keeping.hasUnsaved) addEventListener('beforeunload', askToStay);
    else removeEventListener('beforeunload', askToStay);
  }
}

function askToStay(event: BeforeUnloadEvent): void {
  event.preventDefault();
}
