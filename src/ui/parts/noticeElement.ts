import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { waitingMarks } from '../../notebook/markList.ts';
import type { WithheldFlag } from '../../session/hearing/withheldFlag.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { shownWarnings } from '../measure/shownWarnings.ts';
import { send } from './events.ts';
import { PartElement } from './partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { words } from '../../words/inUse.ts';
import { keepMaybeWords } from '../../words/page/capture.ts';
import { newsWords, unshownWords } from '../../words/notices.ts';

const SHOWN_MS = 8000;

/**
 * The line along the page's lower edge: what the bench has to say, announced politely, and whether the work is saved.
 * It is always there, so that nothing moves and nothing is covered when a message comes. From anywhere it leads to the
 * marks that wait for a length.
 * @fires lengths-show  to go to the newest of them
 * @fires doubts-show  to see what is doubtful
 */
@customElement('bench-notice')
export class NoticeElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .bar {
        position: fixed;
        inset-block-end: 0;
        inset-inline: 0;
        z-index: 5;
        /* As high as with its buttons. */
        min-block-size: calc(var(--target) + 2 * var(--gap-1) + 1px);
        display: flex;
        align-items: center;
        gap: var(--gap-3);
        padding: var(--gap-1) clamp(0.75rem, 2vw, 1.5rem);
        border-block-start: 1px solid var(--line);
        background: var(--paper);
      }
      p {
        flex: 1;
        min-inline-size: 0;
      }
      .told {
        background: var(--room-wash);
        border-color: var(--room);
        box-shadow: inset 0 2px var(--room);
      }
      .problem {
        background: var(--alert-wash);
        border-color: var(--alert);
        box-shadow: inset 0 2px var(--alert);
      }
      button {
        flex: none;
      }
      @media (max-width: 480px) {
        .bar {
          gap: var(--gap-2);
        }
        .told .saved {
          display: none;
        }
        .told p {
          font-size: var(--text-small);
          line-height: 1.2;
        }
        button {
          padding-inline: var(--gap-2);
        }
      }
      .doubts {
        border-color: var(--caution);
        border-inline-start-width: 4px;
        background: var(--caution-wash);
      }
      .saved {
        font-size: var(--text-small);
        color: var(--ink-soft);
      }
      .refused {
        color: var(--alert);
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  private hideTimer = 0;
  protected readonly watch = new SessionWatch(this, ['notice', 'capture', 'notebook', 'answers'], () =>
    this.onChange(),
  );
  protected readonly live = new SessionWatch(this, ['live'], () => this.onLive());
  private lastSerial: number | null = null;
  private shownDoubts = 0;

  /** Warnings about marks and sound, and one where the level can't be trusted. */
  private get doubts(): number {
    const { heard, solved } = shownWarnings(this.session);
    const isTrusted = this.session.hearing.trust.kind === 'trusted';
    return heard.length + solved.length + (isTrusted ? 0 : 1);
  }

  private onLive(): void {
    if (this.doubts !== this.shownDoubts) this.requestUpdate();
  }

  /** News goes by itself; a problem stays until it is closed. */
  private onChange(): void {
    const { notice } = this.session;
    this.requestUpdate();
    if ((notice?.serial ?? null) === this.lastSerial) return;
    this.lastSerial = notice?.serial ?? null;
    clearTimeout(this.hideTimer);
    if (notice?.kind === 'info') {
      this.hideTimer = window.setTimeout(() => this.session.dismissNotice(), SHOWN_MS);
    }
  }

  override render() {
    const { notice, saveState, experiment } = this.session;
    const waiting = waitingMarks(experiment).length;
    const isProblem = notice?.kind === 'problem';
    const { doubts } = this;
    this.shownDoubts = doubts;
    return html`
      <footer class="bar ${notice === null ? '' : 'told'} ${isProblem ? 'problem' : ''}">
        <p role=${isProblem ? 'alert' : 'status'}>
          ${notice === null ? '' : newsWords(notice.news)}${this.unspoken()}
        </p>
        ${notice === null ? nothing : (this.keepMaybe() ?? this.close())}
        ${
          doubts === 0
            ? nothing
            : html`<button class="doubts" @click=${this.onDoubts}>${words.frame.doubts(doubts)}</button>`
        }
        ${
          waiting === 0
            ? nothing
            : html`<button @click=${this.onLengths}>${words.frame.lengthsToType(waiting)}</button>`
        }
        <span class="saved ${saveState.kind}">${words.frame.saved[saveState.kind]}</span>
      </footer>
    `;
  }

  private close() {
    return html`<button @click=${() => this.session.dismissNotice()}>${words.frame.close}</button>`;
  }

  /** What may be a resonance is kept where it is told: a phone has no key for it. It goes by itself as other news. */
  private keepMaybe() {
    const news = this.session.notice?.news;
    if (typeof news !== 'object' || news.code !== 'resonance-maybe') return null;
    const told = this.session.hearing.maybes.find(({ resonance }) => resonance.timeS === news.timeS);
    if (told === undefined) return null;
    return html`<button aria-label=${keepMaybeWords(told.resonance)} @click=${() => this.onKeep(told)}>
      ${words.trustPart.keep}
    </button>`;
  }

  private onKeep(maybe: WithheldFlag): void {
    this.session.hearing.letIn([maybe]);
    this.session.dismissNotice();
  }

  private onDoubts(): void {
    send(this, 'doubts-show');
  }

  private onLengths(): void {
    send(this, 'lengths-show');
  }

  /** What stands elsewhere on the page for the eye, but must be heard with the message: what to do about a failure. */
  private unspoken() {
    const { notice } = this.session;
    const isFailed = this.session.hearing.capture.kind === 'failed';
    const advice = notice === null || !isFailed ? null : unshownWords(notice.news);
    return advice === null ? nothing : html`<span class="unseen"> ${advice}</span>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-notice': NoticeElement;
  }
}
