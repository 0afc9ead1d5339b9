import { css, html } from 'lit';
import { customElement, query } from 'lit/decorators.js';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from './partElement.ts';
import { ClosedByAddress } from './closedByAddress.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** The keys, shown on request. */
@customElement('bench-keys')
export class KeysElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      dialog {
        max-inline-size: min(32rem, 92vw);
      }
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--gap-2) var(--gap-4);
        margin-block: var(--gap-4);
      }
      kbd {
        border: 1px solid var(--edge);
        border-radius: var(--radius);
        padding: 0 var(--gap-2);
        background: var(--paper);
        font: inherit;
        font-weight: 600;
      }
    `,
  ];

  @query('dialog') private dialog!: HTMLDialogElement;
  protected readonly address = new ClosedByAddress(this, () => this.onClose());

  /** Shows them, also if the element has only just come onto the page. */
  async show(): Promise<void> {
    await this.updateComplete;
    if (!this.dialog.open) this.dialog.showModal();
  }

  private onClose(): void {
    this.dialog.close();
  }

  override render() {
    return html`
      <dialog aria-labelledby="title">
        <h2 id="title">${laterWords.keys.heading}</h2>
        <dl>
          ${laterWords.keys.keys.map(
            ([key, words]) =>
              html`<dt><kbd>${key}</kbd></dt>
                <dd>${words}</dd>`,
          )}
        </dl>
        <button @click=${this.onClose}>${laterWords.keys.close}</button>
      </dialog>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-keys': KeysElement;
  }
}
