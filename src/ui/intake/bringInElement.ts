import { css, html } from 'lit';
import type { PropertyValues } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { REQUIRED_COLUMNS } from '../../marks/markColumns.ts';
import { laterWords } from '../../words/inUse.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { isOtherDraft } from '../parts/typedEntry.ts';
import type { FieldDraft } from '../parts/typedEntry.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Endings beside types: a system that doesn't know the type of a table would grey it out. */
const FILES =
  '.json,.csv,.tsv,.txt,application/json,text/csv,text/tab-separated-values,text/plain,audio/*,.wav,.m4a,.mp3,.ogg,.webm,.flac';

/**
 * Files and tables in: a button for files, a field for a table that is pasted or typed.
 * @fires files-bring  detail: the files
 * @fires text-bring  detail: the text
 */
@customElement('bench-bring-in')
export class BringInElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      label > input,
      textarea {
        display: block;
        inline-size: 100%;
      }
      input[type='file'] {
        padding: var(--gap-2);
      }
    `,
  ];

  /** Where a table waits that is typed and not read yet. */
  @property({ attribute: false, hasChanged: isOtherDraft }) draft: FieldDraft | null = null;
  @query('textarea') private field!: HTMLTextAreaElement;

  override updated(changed: PropertyValues<this>): void {
    if (changed.has('draft')) this.field.value = this.draft?.get() ?? '';
  }

  private onInput(): void {
    this.draft?.set(this.field.value);
  }

  private onFiles(event: Event): void {
    const input = event.target as HTMLInputElement;
    const files = [...(input.files ?? [])];
    // The same files may be chosen again.
    input.value = '';
    if (files.length > 0) send(this, 'files-bring', files);
  }

  private onText(): void {
    if (this.field.value.trim() === '') this.field.focus();
    else send(this, 'text-bring', this.field.value);
  }

  /** What was typed is done with. */
  clearText(): void {
    this.field.value = '';
    this.draft?.set(null);
  }

  override render() {
    return html`<div class="stack">
      <label
        >${laterWords.bringIn.files}
        <input
          type="file"
          multiple
          accept=${FILES}
          aria-label=${laterWords.bringIn.filesName}
          @change=${this.onFiles}
      /></label>
      <label
        >${laterWords.bringIn.table}
        <textarea
          rows="4"
          spellcheck="false"
          placeholder=${REQUIRED_COLUMNS.join(';')}
          @input=${this.onInput}
        ></textarea>
      </label>
      <p><button @click=${this.onText}>${laterWords.bringIn.read}</button></p>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-bring-in': BringInElement;
  }
}
