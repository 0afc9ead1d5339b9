import type { ReactiveController } from 'lit';
import type { Session } from '../session/session.ts';
import type { PartElement } from './parts/partElement.ts';
import { SessionWatch } from './sessionWatch.ts';

/** Has the browser ask before the tab is closed or loaded anew, as long as work is in its memory only. */
export class LeaveWarning implements ReactiveController {
  constructor(private readonly host: PartElement & { session: Session }) {
    host.addController(this);
    new SessionWatch(host, ['keeping', 'notebook'], () => this.follow());
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
