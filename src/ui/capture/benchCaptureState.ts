import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CaptureFailure } from '../../capture/soundSource.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { flagFacts } from './flagFacts.ts';

/**
 * What stands between the microphone and a result: a failure, a pause, or a level that may be rewritten, each with
 * the one thing to do.
 * @fires listen-start  to rebuild capture
 */
@customElement('bench-capture-state')
export class BenchCaptureState extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      section {
        border-inline-start: 5px solid var(--caution);
        background: var(--caution-wash);
        padding: var(--gap-2) var(--gap-3);
      }
      .bad {
        border-inline-start-color: var(--alert);
        background: var(--alert-wash);
      }
      a.button {
        display: inline-flex;
        align-items: center;
        text-decoration: none;
      }
      a {
        color: inherit;
      }
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-1) var(--gap-4);
        list-style: none;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  private shown = '';
  protected readonly watch = new BenchWatch(this, ['capture', 'notebook', 'live'], () => this.onChange());

  /** The level changes twenty times a second, this hardly ever. */
  private onChange(): void {
    const { capture, trust, withheldFlags } = this.session;
    const next = JSON.stringify([capture, trust, withheldFlags]);
    if (next !== this.shown) this.requestUpdate();
    this.shown = next;
  }

  private onAgain(): void {
    this.dispatchEvent(new CustomEvent('listen-start', { bubbles: true, composed: true }));
  }

  override render() {
    const { capture } = this.session;
    if (capture.kind === 'failed') return this.failed(capture.failure);
    if (capture.kind === 'interrupted') return this.paused(capture.message);
    return capture.kind === 'running' ? this.trust() : nothing;
  }

  private failed(failure: CaptureFailure) {
    return html`<section class="stack bad" aria-label="Listening ended">
      <p><strong>Not listening.</strong> ${failure.message}</p>
      <p class="row">
        <button class="primary" @click=${this.onAgain}>Start again</button>
        ${
          failure.code === 'framed'
            ? html`<a class="button" href=${location.href} target="_blank" rel="noopener"
                >Open in a tab of its own</a
              >`
            : nothing
        }
        <a href="#microphone">Help with the microphone</a>
      </p>
    </section>`;
  }

  private paused(message: string) {
    return html`<section class="stack" aria-label="Listening is paused">
      <p><strong>Paused.</strong> ${message}</p>
      <p class="row"><button @click=${this.onAgain}>Start again</button></p>
    </section>`;
  }

  private trust() {
    const { trust, withheldFlags, capture, gainCheck } = this.session;
    if (trust.kind === 'trusted' || capture.kind !== 'running' || capture.settings === null) return nothing;
    const isBlocked = trust.kind === 'blocked';
    return html`<section class="stack ${isBlocked ? 'bad' : ''}" aria-label="Can the level be trusted?">
      <p><strong>${isBlocked ? 'Flags are off.' : 'Not proven raw.'}</strong> ${trust.message}</p>
      <ul>
        ${flagFacts(capture.settings).map(({ name, state }) => html`<li>${name}: <strong>${state}</strong></li>`)}
      </ul>
      ${withheldFlags > 0 ? html`<p>Withheld so far: ${withheldFlags}.</p>` : nothing}
      <p class="row">
        ${
          trust.gainCheckHelps && gainCheck === null
            ? html`<a class="button" href="#check">Go to the gain check</a>`
            : nothing
        }
        <a href="#microphone">Help with the microphone</a>
      </p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-capture-state': BenchCaptureState;
  }
}
