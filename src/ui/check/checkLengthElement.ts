import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { checkWords } from './checkWords.ts';

/** Is this length at resonance? The column stays; the fork goes away and comes back. */
@customElement('bench-check-length')
export class CheckLengthElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .verdict {
        font-size: clamp(1.75rem, 1.2rem + 2.4vw, 3rem);
        font-weight: 600;
        line-height: 1.1;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['capture']);

  override render() {
    const { check, isListening } = this.session.hearing;
    const words = check === null ? null : checkWords(check.answer);
    return html`<section class="stack" aria-label="Check a length">
      <h2>Check a length</h2>
      <p class="lead">
        The column stays as it is. Strike the fork, hold it at the mouth and away from it in turn: the bench
        says whether this length resonates.
      </p>
      ${
        words === null
          ? nothing
          : html`<div role="status" class="stack">
              <p class="verdict"><span aria-hidden="true">${words.sign}</span> ${words.verdict}</p>
              <p>${words.detail}</p>
            </div>`
      }
      <p class="row">
        ${
          check === null
            ? html`<button
                class="primary"
                ?disabled=${!isListening}
                @click=${() => this.session.hearing.beginCheck()}
              >
                Begin the check
              </button>`
            : html`<button @click=${() => this.session.hearing.beginCheck()}>Begin again</button
                ><button @click=${() => this.session.hearing.endCheck()}>End the check</button>`
        }
        ${isListening ? nothing : html`<span class="small">Begin to listen first.</span>`}
      </p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-check-length': CheckLengthElement;
  }
}
