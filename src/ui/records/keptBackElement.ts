import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { keepsBack } from '../../notebook/keptBack.ts';
import { revealLesson } from '../../session/experiment/lessonArrival.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { keptBackList } from '../../words/page/lesson.ts';
import { PartElement } from '../parts/partElement.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What the open experiment's lesson keeps back, and the field for the code that shows it. */
@customElement('bench-kept-back')
export class KeptBackElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      :host(:empty) {
        display: contents;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @query('input') private field!: HTMLInputElement;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  private onSubmit(event: Event): void {
    event.preventDefault();
    if (this.field.value.trim() === '') this.field.focus();
    else void revealLesson(this.session, this.field.value, new Date().toISOString());
  }

  override render() {
    const { lesson } = this.session.experiment;
    if (!keepsBack(lesson)) return nothing;
    return html`<section class="sheet stack" aria-label=${laterWords.keptBack.heading}>
      <h2>${laterWords.keptBack.heading}</h2>
      <p>${keptBackList(lesson)}</p>
      ${
        lesson.reveal === undefined
          ? html`<p class="small">${laterWords.keptBack.noCode}</p>`
          : html`<form class="row" @submit=${this.onSubmit}>
              <label
                >${laterWords.keptBack.code}<input maxlength="40" autocomplete="off" spellcheck="false"
              /></label>
              <button>${laterWords.keptBack.show}</button>
            </form>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-kept-back': KeptBackElement;
  }
}
