import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { lengthAnswerWords } from '../../words/page/lengthCheck.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { verdictStyles } from './verdictStyles.ts';

/** Is this length at resonance? The column stays; the fork goes away and comes back. */
@customElement('bench-check-length')
export class CheckLengthElement extends PartElement {
  static override styles = [sharedStyles, verdictStyles];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['capture']);

  override render() {
    const { check, isListening } = this.session.hearing;
    const words = check === null ? null : lengthAnswerWords(check.answer);
    return html`<section class="stack" aria-label=${laterWords.checkLength.heading}>
      <h2>${laterWords.checkLength.heading}</h2>
      <p class="lead">${laterWords.checkLength.lead}</p>
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
                ${laterWords.checkLength.begin}
              </button>`
            : html`<button @click=${() => this.session.hearing.beginCheck()}>
                  ${laterWords.checkLength.again}</button
                ><button @click=${() => this.session.hearing.endCheck()}>
                  ${laterWords.checkLength.end}
                </button>`
        }
        ${isListening ? nothing : html`<span class="small">${laterWords.checkLength.listenFirst}</span>`}
      </p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-check-length': CheckLengthElement;
  }
}
