import { css, html } from 'lit';
import { customElement, query } from 'lit/decorators.js';
import { PartElement } from './partElement.ts';
import { ClosedByAddress } from './closedByAddress.ts';
import { sharedStyles } from '../sharedStyles.ts';

const KEYS = [
  ['L', 'listen, or stop'],
  ['M', 'make a mark that waits for its length'],
  ['E', 'go to the newest mark without a length, else to the line that adds one'],
  ['Enter', 'take the typed length and go on to the next mark'],
  ['Esc', 'leave a field, so that these keys work again'],
  ['S', 'practice: strike the fork'],
  ['F', 'practice: fork to the mouth, or away'],
  ['← →', 'slide the column by a millimetre; hold to go on'],
  ['Ctrl Z', 'undo'],
  ['Ctrl Y', 'do it again'],
  ['?', 'show these keys'],
] as const;

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

  show(): void {
    if (!this.dialog.open) this.dialog.showModal();
  }

  private onClose(): void {
    this.dialog.close();
  }

  override render() {
    return html`
      <dialog aria-labelledby="title">
        <h2 id="title">Keys</h2>
        <dl>
          ${KEYS.map(
            ([key, words]) =>
              html`<dt><kbd>${key}</kbd></dt>
                <dd>${words}</dd>`,
          )}
        </dl>
        <button @click=${this.onClose}>Close</button>
      </dialog>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-keys': KeysElement;
  }
}
