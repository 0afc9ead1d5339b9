import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

const SHOWN_MS = 8000;

/** What the bench has to say: shown until it is read, and announced politely. */
@customElement('bench-notice')
export class BenchNotice extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      /* Over the page's lower edge, so that nothing moves when it comes. */
      .notice {
        position: fixed;
        inset-block-end: var(--gap-3);
        inset-inline-start: 50%;
        transform: translateX(-50%);
        inline-size: max-content;
        max-inline-size: min(44rem, 94vw);
        z-index: 5;
        box-shadow: 0 2px 14px rgb(0 0 0 / 25%);
        border-radius: var(--radius);
        display: flex;
        justify-content: space-between;
        align-items: center;
        gap: var(--gap-3);
        border-inline-start: 5px solid var(--room);
        background: var(--room-wash);
        padding: var(--gap-1) var(--gap-3);
      }
      .problem {
        border-inline-start-color: var(--alert);
        background: var(--alert-wash);
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  private hideTimer = 0;
  protected readonly watch = new BenchWatch(this, ['notice'], () => this.onNotice());

  /** News goes by itself; a problem stays until it is closed. */
  private onNotice(): void {
    clearTimeout(this.hideTimer);
    if (this.session.notice?.kind === 'info') {
      this.hideTimer = window.setTimeout(() => this.session.dismissNotice(), SHOWN_MS);
    }
    this.requestUpdate();
  }

  override render() {
    const { notice } = this.session;
    const isProblem = notice?.kind === 'problem';
    return html`
      <div class="notice ${isProblem ? 'problem' : ''}" ?hidden=${notice === null}>
        <p role=${isProblem ? 'alert' : 'status'}>${notice?.message ?? ''}</p>
        <button @click=${() => this.session.dismissNotice()}>Close</button>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-notice': BenchNotice;
  }
}
