import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { warningMessages } from './warningMessages.ts';

/** What is doubtful about the marks or the sound, each with what to do about it. */
@customElement('bench-warnings')
export class WarningsElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      ul {
        display: grid;
        gap: var(--gap-2);
        list-style: none;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  private shown = '';
  protected readonly watch = new SessionWatch(this, ['notebook', 'capture', 'live', 'answers'], () =>
    this.onChange(),
  );

  private onChange(): void {
    const next = warningMessages(this.session).join('\n');
    if (next !== this.shown) this.requestUpdate();
    this.shown = next;
  }

  override render() {
    const messages = warningMessages(this.session);
    if (messages.length === 0) return nothing;
    return html`<ul aria-label=${words.doubts.heading}>
      ${messages.map((message) => html`<li class="caution">${message}</li>`)}
    </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-warnings': WarningsElement;
  }
}
