import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { saveExperiment } from '../saveFile.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { noteRead, wasRead } from './homeScreen.ts';

/** With the first mark that is saved: that this browser won't keep it for long, and what to do. Until it was read. */
@customElement('bench-home-screen')
export class HomeScreenElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .caution {
        display: grid;
        gap: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private isRead = wasRead();
  protected readonly watch = new SessionWatch(this, ['keeping', 'notebook']);

  private onSave(): void {
    saveExperiment(this.session.experiment);
  }

  private onRead(): void {
    noteRead();
    this.isRead = true;
  }

  override render() {
    const { experiment, saveState } = this.session;
    if (this.isRead || saveState.kind !== 'saved' || experiment.marks.length === 0) return nothing;
    return html`<div class="caution" role="status">
      <p>${laterWords.homeScreen.advice}</p>
      <p class="row">
        <button @click=${this.onSave}>${laterWords.homeScreen.save}</button>
        <button @click=${this.onRead}>${laterWords.homeScreen.read}</button>
      </p>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-home-screen': HomeScreenElement;
  }
}
