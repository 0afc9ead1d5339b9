import { css, html, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { PartElement } from './partElement.ts';
import { ClosedByAddress } from './closedByAddress.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What is asked before something is done that can't be taken back. */
export interface Question {
  /** The question itself. */
  readonly heading: string;
  /** What will be gone. */
  readonly message: string;
  /** Words of the button that leaves all as it is. */
  readonly no: string;
  readonly yes: string;
  /** Something that can be done first; then the answer is yes. */
  readonly first?: { readonly words: string; readonly act: () => void };
}

/** Asks before something that has no undo. Escape is a no, and so is an address that leads elsewhere. */
@customElement('bench-ask')
export class AskElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      dialog {
        border-color: var(--ink);
        border-width: 2px;
        max-inline-size: min(34rem, 92vw);
      }
      /* Not over what it is about. */
      dialog.low {
        margin-block: auto 4rem;
      }
      dialog.high {
        margin-block: 4rem auto;
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 20%);
      }
      h3,
      p {
        overflow-wrap: anywhere;
      }
    `,
  ];

  @state() private question: Question | null = null;
  /** Whether it stands low on the screen: what was pressed for it stands high. */
  @state() private isLow = false;
  @query('dialog') private dialog!: HTMLDialogElement;
  private answer: ((isYes: boolean) => void) | null = null;
  protected readonly address = new ClosedByAddress(this, () => this.settle(false));

  /** Settles with the answer. A question that still stands is answered with no. */
  async ask(question: Question): Promise<boolean> {
    this.settle(false);
    this.question = question;
    this.isLow = pressedAtPx() < innerHeight / 2;
    const answered = new Promise<boolean>((resolve) => (this.answer = resolve));
    await this.updateComplete;
    this.dialog.showModal();
    return answered;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.settle(false);
  }

  private settle(isYes: boolean): void {
    const { answer } = this;
    this.answer = null;
    if (this.dialog?.open) this.dialog.close();
    answer?.(isYes);
  }

  private onFirst(): void {
    this.question?.first?.act();
    this.settle(true);
  }

  override render() {
    const { question } = this;
    return html`<dialog
      class=${this.isLow ? 'low' : 'high'}
      aria-labelledby="question"
      @close=${() => this.settle(false)}
    >
      ${
        question === null
          ? nothing
          : html`<div class="stack">
              <h3 id="question">${question.heading}</h3>
              <p>${question.message}</p>
              <div class="row">
                <button @click=${() => this.settle(false)}>${question.no}</button>
                ${
                  question.first === undefined
                    ? nothing
                    : html`<button @click=${this.onFirst}>${question.first.words}</button>`
                }
                <button @click=${() => this.settle(true)}>${question.yes}</button>
              </div>
            </div>`
      }
    </dialog>`;
  }
}

/** Where the element with the keyboard stands, px from the screen's upper edge: the button that was pressed. */
function pressedAtPx(): number {
  let element = document.activeElement;
  while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
  return element?.getBoundingClientRect().top ?? 0;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-ask': AskElement;
  }
}
