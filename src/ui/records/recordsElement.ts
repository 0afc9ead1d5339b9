import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './experimentsElement.ts';
import './filesElement.ts';
import './handInElement.ts';
import './keptBackElement.ts';
import './lessonElement.ts';
import './soundsElement.ts';
import './storedElement.ts';
import './tablesElement.ts';
import '../intake/bringInElement.ts';

/** What is kept, what goes out and comes in, and lessons. */
@customElement('bench-records')
export class RecordsElement extends PartElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: Session;

  override render() {
    const { before, part, after } = laterWords.records.toClass;
    return html`<div class="cards">
      <bench-experiments class="sheet" .session=${this.session}></bench-experiments>
      <bench-files .session=${this.session}></bench-files>
      <section class="sheet stack" aria-label=${laterWords.records.bringIn}>
        <h2>${laterWords.records.bringIn}</h2>
        <p class="lead">${laterWords.records.bringInLead}</p>
        <bench-bring-in .draft=${fieldDraft(this.session, 'table')}></bench-bring-in>
        <p>${before}<a href="#class">${part}</a>${after}</p>
      </section>
      <section class="sheet stack" aria-label=${laterWords.records.report}>
        <h2>${laterWords.records.report}</h2>
        <p class="lead">${laterWords.records.reportLead}</p>
        <p><a href="#report">${laterWords.records.openReport}</a></p>
      </section>
      <bench-tables class="sheet" .session=${this.session}></bench-tables>
      <bench-hand-in class="sheet" .session=${this.session}></bench-hand-in>
      <bench-kept-back .session=${this.session}></bench-kept-back>
      <bench-lesson class="sheet" .session=${this.session}></bench-lesson>
      <bench-sounds class="sheet" .session=${this.session}></bench-sounds>
      <bench-stored class="sheet" .session=${this.session}></bench-stored>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-records': RecordsElement;
  }
}
