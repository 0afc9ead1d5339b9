import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { QuantityKind } from '../readQuantity.ts';
import { send } from './events.ts';
import { PartElement } from './partElement.ts';
import { TypedEntry, isOtherDraft } from './typedEntry.ts';
import type { FieldDraft } from './typedEntry.ts';
import { keepFocus } from './keepFocus.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { words } from '../../words/inUse.ts';
import { tidy } from '../../words/numbers.ts';
import { parseFaultWords } from '../../words/parseFaults.ts';

/**
 * A number with its unit, typed as people write it. A fault is shown under it and what was typed stays.
 * @fires quantity-change  detail: the value in the kind's unit
 * @fires quantity-clear  where a field that may be empty was emptied
 */
@customElement('bench-number-field')
export class NumberField extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      label {
        display: block;
        font-size: var(--text-small);
      }
      .entry {
        display: flex;
        align-items: center;
        gap: var(--gap-1);
      }
      input {
        inline-size: 100%;
        max-inline-size: 8rem;
      }
      .unit {
        color: var(--ink-soft);
        min-inline-size: 2ch;
      }
    `,
  ];

  @property({ attribute: false }) kind!: QuantityKind;
  @property() label = '';
  @property() hint = '';
  /** In the kind's unit; null shows an empty field. */
  @property({ attribute: false }) value: number | null = null;
  /** Whether the field may be left empty. */
  @property({ type: Boolean }) optional = false;
  /** What else stands against a value in the kind's unit, though it is within its limits; null: nothing. */
  @property({ attribute: false }) check: (value: number) => string | null = () => null;
  @state() private faultMessage: string | null = null;
  /** Where half a number waits; null: it waits in the field only. */
  @property({ attribute: false, hasChanged: isOtherDraft }) draft: FieldDraft | null = null;
  private readonly entry: TypedEntry = new TypedEntry(this);
  @query('input') private input!: HTMLInputElement;

  override willUpdate(): void {
    // A fault belongs to what was typed for another experiment or field.
    if (this.entry.follow()) this.faultMessage = null;
  }

  private onInput(): void {
    this.entry.type(this.input.value);
  }

  private onKey(event: KeyboardEvent): void {
    // What was typed before the page was loaded anew is no change to the browser.
    if (event.key === 'Enter') this.onChange();
  }

  private onSign(): void {
    const text = this.input.value.trim();
    this.input.value = /^[-−]/.test(text) ? text.slice(1) : `−${text}`;
    this.onInput();
    // To the browser this is no change. Without a number yet, one is to follow.
    if (/\d/.test(text)) this.onChange();
    else this.input.focus();
  }

  /** The value as the field writes it. */
  private get written(): string {
    return this.value === null ? '' : tidy(this.value, this.kind.digits ?? 8);
  }

  private onChange(): void {
    const text = this.input.value;
    // The value may have more digits than the field shows.
    if (text === this.written && this.value !== null) {
      this.entry.done();
      this.faultMessage = null;
      return;
    }
    const isEmpty = text.trim() === '';
    const reading = isEmpty && this.optional ? null : this.kind.read(text);
    const fault =
      reading === null ? null : reading.ok ? this.check(reading.value) : parseFaultWords(reading.fault);
    if (fault !== null || reading?.ok === false) {
      this.entry.type(text);
      this.faultMessage = fault;
      return;
    }
    this.entry.done();
    this.faultMessage = null;
    const value = reading?.value ?? null;
    if (value === this.value) return;
    if (value === null) send(this, 'quantity-clear');
    else send(this, 'quantity-change', value);
  }

  override render() {
    const shown = this.entry.typed ?? this.written;
    return html`
      <label for="entry">${this.label}</label>
      <div class="entry">
        <input
          id="entry"
          inputmode="decimal"
          autocomplete="off"
          .value=${live(shown)}
          aria-invalid=${this.faultMessage === null ? 'false' : 'true'}
          aria-describedby="unit hint fault"
          @input=${this.onInput}
          @keydown=${this.onKey}
          @change=${this.onChange}
        />
        <span class="unit" id="unit">${this.kind.unit}</span>
        ${
          this.kind.isSigned === true
            ? html`<button
                class="pad-key"
                aria-label=${words.field.changeSign}
                @mousedown=${keepFocus}
                @click=${this.onSign}
              >
                ±
              </button>`
            : nothing
        }
      </div>
      <p class="small" id="hint" ?hidden=${this.hint === ''}>${this.hint}</p>
      <p class="fault" id="fault" role="alert" ?hidden=${this.faultMessage === null}>
        ${this.faultMessage ?? nothing}
      </p>
      ${this.entry.hint()}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-number-field': NumberField;
  }
}
