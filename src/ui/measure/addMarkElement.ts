import { css, html } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { PageEvent } from '../parts/events.ts';
import type { LengthField } from '../parts/lengthField.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import type { FieldDraft } from '../parts/typedEntry.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/lengthField.ts';
import { askReading, checkReading } from './checkReading.ts';

/** Adds a mark whose length is typed at once, for work without a microphone. */
@customElement('bench-add-mark')
export class AddMarkElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .row {
        align-items: start;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** Over the picture of the column. */
  @property({ type: Boolean }) afloat = false;
  @query('bench-length-field') private field!: LengthField;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  private typed: string | null = null;
  private readonly typedAs: FieldDraft = {
    key: 'typed',
    get: () => null,
    set: (text) => (this.typed = text),
  };

  async focusLength(): Promise<void> {
    await this.updateComplete;
    await this.field.focusEntry();
  }

  private readonly checkReading = (readingM: number): string | null => checkReading(this.session, readingM);

  private readonly askReading = (readingM: number): string | null => askReading(this.session, readingM);

  private onLength(event: PageEvent<'length-change'>): void {
    const reading = event.detail;
    if (reading === null) return;
    this.session.addMarkByHand(reading.lengthM, reading.otherLengthM);
    const made = this.session.experiment.marks.at(-1);
    if (made !== undefined) fieldDraft(this.session, `typed ${made.id}`).set(this.typed);
  }

  private onAdd(): void {
    this.field.take();
    void this.field.focusEntry();
  }

  private onDone(event: Event): void {
    event.stopPropagation();
  }

  override render() {
    return html`
      <div class="row">
        <bench-length-field
          label=${words.marks.newLength}
          .draft=${fieldDraft(this.session, 'new length')}
          fleeting
          ?afloat=${this.afloat}
          .check=${this.checkReading}
          .question=${this.askReading}
          .typedAs=${this.typedAs}
          @length-change=${this.onLength}
          @length-done=${this.onDone}
        ></bench-length-field>
        <button @click=${this.onAdd}>${words.marks.add}</button>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-add-mark': AddMarkElement;
  }
}
