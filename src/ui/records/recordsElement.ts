import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './experimentsElement.ts';
import './filesElement.ts';
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
    return html`<div class="cards">
      <bench-experiments class="sheet" .session=${this.session}></bench-experiments>
      <bench-files .session=${this.session}></bench-files>
      <section class="sheet stack" aria-label="Bring in">
        <h2>Bring in</h2>
        <p class="lead">Or drop files anywhere on the page, or paste a table anywhere outside a field.</p>
        <bench-bring-in .draft=${fieldDraft(this.session, 'table')}></bench-bring-in>
        <p>Many groups’ files: <a href="#class">open the class view</a></p>
      </section>
      <section class="sheet stack" aria-label="Lab report">
        <h2>Lab report</h2>
        <p class="lead">
          Apparatus, method, marks, plots, working, budget, result and comparison on a few pages, with room
          for names and discussion.
        </p>
        <p><a href="#report">Open the report</a></p>
      </section>
      <bench-tables class="sheet" .session=${this.session}></bench-tables>
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
