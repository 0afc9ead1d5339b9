import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { trustWords } from '../../words/captureTrust.ts';
import { captureWords, flagWords, trustPartWords } from '../../words/page/capture.ts';
import { captureStyles } from './captureStyles.ts';

/** While the microphone runs: whether its level may be rewritten, what the browser says of it, and what to do. */
@customElement('bench-trust')
export class TrustElement extends PartElement {
  static override styles = [
    sharedStyles,
    captureStyles,
    css`
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-1) var(--gap-4);
        list-style: none;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  private shown = '';
  protected readonly watch = new SessionWatch(this, ['capture', 'notebook', 'live'], () => this.onChange());

  /** The level changes twenty times a second, this hardly ever. */
  private onChange(): void {
    const { capture, trust, withheldFlags } = this.session.hearing;
    const next = JSON.stringify([capture, trust, withheldFlags]);
    if (next !== this.shown) this.requestUpdate();
    this.shown = next;
  }

  override render() {
    const { trust, withheldFlags, capture, gainCheck } = this.session.hearing;
    if (trust.kind === 'trusted' || capture.kind !== 'running' || capture.settings === null) return nothing;
    const isBlocked = trust.kind === 'blocked';
    return html`<section class="stack ${isBlocked ? 'bad' : ''}" aria-label=${trustPartWords.name}>
      <p>
        <strong>${isBlocked ? trustPartWords.blocked : trustPartWords.unproven}</strong> ${trustWords(trust)}
      </p>
      <ul>
        ${flagWords(capture.settings).map(({ name, state }) => html`<li>${name}: <strong>${state}</strong></li>`)}
      </ul>
      ${withheldFlags > 0 ? html`<p>${trustPartWords.withheld(withheldFlags)}</p>` : nothing}
      <p class="row">
        ${
          trust.gainCheckHelps && gainCheck === null
            ? html`<a class="button" href="#check">${trustPartWords.toCheck}</a>`
            : nothing
        }
        <a href="#microphone">${captureWords.help}</a>
      </p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-trust': TrustElement;
  }
}
