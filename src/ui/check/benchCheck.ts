import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BenchSession } from '../../session/benchSession.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './benchCheckLength.ts';
import './benchGainCheck.ts';
import './benchSoundCheck.ts';
import './benchSweep.ts';
import './benchTone.ts';

/** What is checked with the ear of the bench, beside the slide itself. */
@customElement('bench-check')
export class BenchCheck extends LitElement {
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
      <bench-sound-check .session=${this.session}></bench-sound-check>
      <bench-gain-check class="sheet" .session=${this.session}></bench-gain-check>
      <bench-check-length class="sheet" .session=${this.session}></bench-check-length>
      <bench-tone class="sheet" .session=${this.session}></bench-tone>
      <bench-sweep class="sheet" .session=${this.session}></bench-sweep>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-check': BenchCheck;
  }
}
