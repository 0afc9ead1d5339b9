import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { parseReading } from '../../marks/parseReading.ts';
import type { Reading } from '../../marks/parseReading.ts';
import { words } from '../../words/inUse.ts';
import { readingWords } from '../../words/readings.ts';
import { send } from './events.ts';
import { PartElement } from './partElement.ts';
import { TypedEntry, isOtherDraft } from './typedEntry.ts';
import type { FieldDraft } from './typedEntry.ts';
import { keepFocus } from './keepFocus.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { parseFaultWords } from '../../words/parseFaults.ts';

/**
 * A length as read off the rule, or two around a resonance. Enter takes it and says that the hand may go on to the next.
 * @fires length-change  detail: the reading in metres, or null where the field was emptied
 * @fires length-done  after Enter on a length that was understood, or on nothing
 */
@customElement('bench-length-field')
export class LengthField extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .entry {
        display: flex;
        align-items: center;
        gap: var(--gap-1);
      }
      /* Over the picture a fault has no line of its own: it stands on the field. */
      :host([afloat]) {
        position: relative;
      }
      :host([afloat]) .note {
        position: absolute;
        inset-block-end: calc(100% + var(--gap-1));
        inset-inline-start: 0;
        inline-size: max-content;
        max-inline-size: min(26rem, 80vw);
        z-index: 3;
        display: grid;
        gap: var(--gap-1);
      }
      :host([afloat]) .note > * {
        background: var(--sheet);
        border: 2px solid var(--alert);
        border-radius: var(--radius);
        padding: var(--gap-1) var(--gap-2);
      }
      input {
        inline-size: 7rem;
        font-size: var(--text-large);
      }
    `,
  ];

  @property() label: string = words.field.length;
  @property({ attribute: false }) lengthM: number | null = null;
  /** The longer length of a bracket; null for a single one. */
  @property({ attribute: false }) otherLengthM: number | null = null;
  /** Lies over a picture: what is said of it stands above it and moves nothing. */
  @property({ type: Boolean, reflect: true }) afloat = false;
  /** Empties itself after each length, for the line that adds marks. */
  @property({ type: Boolean }) fleeting = false;
  /** Where half a length waits; null: it waits in the field only. */
  @property({ attribute: false, hasChanged: isOtherDraft }) draft: FieldDraft | null = null;
  private readonly entry: TypedEntry = new TypedEntry(this);
  /** What stands against a reading, m, though it is a length; null: nothing. */
  @property({ attribute: false }) check: (readingM: number) => string | null = () => null;
  /** What is asked before a reading is taken, m; null: nothing. */
  @property({ attribute: false }) question: (readingM: number) => string | null = () => null;
  /** Keeps a reading as it was typed. */
  @property({ attribute: false, hasChanged: isOtherDraft }) typedAs: FieldDraft | null = null;
  private kept = '';
  @state() private faultMessage: string | null = null;
  /** The text that is asked about; the same once more is the answer yes. */
  @state() private asked: { readonly text: string; readonly words: string } | null = null;
  @query('input') private input!: HTMLInputElement;

  override willUpdate(changed: Map<string, unknown>): void {
    if (['lengthM', 'otherLengthM', 'typedAs'].some((name) => changed.has(name)))
      this.kept = this.typedAs?.get() ?? '';
    // A fault belongs to what was typed for another experiment or field.
    if (!this.entry.follow()) return;
    this.faultMessage = null;
    this.asked = null;
  }

  /** Puts the keyboard here, also if the field has only just come onto the page. */
  async focusEntry(): Promise<void> {
    await this.updateComplete;
    this.input.focus();
    this.input.select();
  }

  /** Takes what is typed. @returns whether it was understood */
  take(): boolean {
    const text = this.input.value;
    if (text.trim() === '') {
      this.accept(null);
      return false;
    }
    const parsed = parseReading(text);
    const fault = parsed.ok
      ? (this.check(parsed.lengthM) ?? this.checkOther(parsed.otherLengthM))
      : parseFaultWords(parsed.fault);
    if (fault !== null || !parsed.ok) {
      this.entry.type(text);
      this.faultMessage = fault;
      return false;
    }
    const words = this.question(parsed.lengthM);
    if (words !== null && this.asked?.text !== text) {
      this.entry.type(text);
      this.faultMessage = null;
      this.asked = { text, words };
      return false;
    }
    this.typedAs?.set(text);
    this.kept = text;
    this.accept({ lengthM: parsed.lengthM, otherLengthM: parsed.otherLengthM });
    return true;
  }

  private onYes(): void {
    if (this.take()) send(this, 'length-done');
  }

  private checkOther(readingM: number | null): string | null {
    return readingM === null ? null : this.check(readingM);
  }

  private accept(reading: Reading | null): void {
    this.entry.done();
    this.faultMessage = null;
    this.asked = null;
    const isNew =
      (reading?.lengthM ?? null) !== this.lengthM || (reading?.otherLengthM ?? null) !== this.otherLengthM;
    if (isNew) send(this, 'length-change', reading);
    if (this.fleeting) this.input.value = '';
  }

  private onInput(): void {
    this.asked = null;
    this.entry.type(this.input.value);
  }

  private onDash(): void {
    const { input } = this;
    const end = input.value.length;
    input.setRangeText('–', input.selectionStart ?? end, input.selectionEnd ?? end, 'end');
    this.onInput();
    input.focus();
  }

  private onChange(): void {
    // The line that adds marks waits for Enter or its button: leaving it must not make a mark, nor answer a question.
    if (!this.fleeting && this.asked === null) this.take();
  }

  private onKey(event: KeyboardEvent): void {
    // Back to the keys that strike and listen; the tabulator goes on from here.
    if (event.key === 'Escape') this.input.blur();
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const isEmpty = this.input.value.trim() === '';
    if (this.take() || isEmpty) send(this, 'length-done');
  }

  /** As it was typed, as long as it still says the same. */
  private written(): string {
    const { lengthM, otherLengthM } = this;
    if (lengthM === null) return '';
    const parsed = parseReading(this.kept);
    const isSame = parsed.ok && parsed.lengthM === lengthM && parsed.otherLengthM === otherLengthM;
    return isSame ? this.kept : readingWords(lengthM, otherLengthM);
  }

  /** It stands at the field, and whatever it is about stays in sight. */
  private ask() {
    if (this.asked === null) return nothing;
    return html`<div role="alert" class="row">
      <span>${this.asked.words}</span>
      <button @mousedown=${keepFocus} @click=${this.onYes}>${words.field.take}</button>
    </div>`;
  }

  override render() {
    const shown = this.entry.typed ?? this.written();
    return html`
      <div class="entry">
        <input
          aria-label=${this.label}
          inputmode="decimal"
          enterkeyhint="next"
          autocomplete="off"
          .value=${live(shown)}
          aria-invalid=${this.faultMessage === null ? 'false' : 'true'}
          aria-describedby="unit fault"
          @input=${this.onInput}
          @change=${this.onChange}
          @keydown=${this.onKey}
        />
        <span id="unit">${words.field.centimetres}</span>
        <button class="pad-key" aria-label=${words.field.dash} @mousedown=${keepFocus} @click=${this.onDash}>
          –
        </button>
      </div>
      <div class="note">
        <p class="fault" id="fault" role="alert" ?hidden=${this.faultMessage === null}>
          ${this.faultMessage ?? nothing}
        </p>
        ${this.ask()} ${this.entry.hint()}
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-length-field': LengthField;
  }
}
