import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BenchSession } from '../../session/benchSession.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './benchFiles.ts';
import './benchLesson.ts';

/** What is kept, what goes out and comes in, and lessons. */
@customElement('bench-records')
export class BenchRecords extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      .cards {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr));
        gap: var(--gap-4);
        align-items: start;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;

  override render() {
    return html`<div class="cards">
      <bench-files .session=${this.session}></bench-files>
      <bench-lesson class="sheet" .session=${this.session}></bench-lesson>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-records': BenchRecords;
  }
}
