import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LONGEST } from '../../limits/longest.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { saveExperiment } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { TypedTexts } from '../parts/typedTexts.ts';
import type { TypedText } from '../parts/typedTexts.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';

const TITLE: TypedText = {
  field: 'title',
  step: 'rename',
  read: ({ title }) => title,
  write: (experiment, title) => ({ ...experiment, title }),
};
const NOTE: TypedText = {
  field: 'note',
  step: 'write note',
  read: ({ note }) => note,
  write: (experiment, note) => ({ ...experiment, note }),
};

/** Files out and in. Nothing leaves this device by itself. */
@customElement('bench-files')
export class FilesElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      label > input,
      textarea {
        display: block;
        inline-size: 100%;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  private readonly texts = new TypedTexts(this, () => [TITLE, NOTE]);
  protected readonly watch = new SessionWatch(this, ['notebook', 'capture']);

  private onJson(): void {
    saveExperiment(this.session.experiment);
  }

  override render() {
    const { experiment, saveState } = this.session;
    return html`
      <section class="sheet stack" aria-label="This experiment">
        <h2>This experiment</h2>
        <label
          >Title
          <input
            maxlength=${LONGEST.title}
            .value=${experiment.title}
            @input=${(event: Event) => this.texts.onInput(event, TITLE)}
            @change=${(event: Event) => this.texts.onLeave(event, TITLE)}
        /></label>
        <label
          >Note
          <textarea
            rows="3"
            maxlength=${LONGEST.note}
            .value=${experiment.note}
            @input=${(event: Event) => this.texts.onInput(event, NOTE)}
            @change=${(event: Event) => this.texts.onLeave(event, NOTE)}
          ></textarea>
        </label>
        <p class="lead">
          ${
            saveState.kind === 'refused'
              ? `Not saved on this device (${storageFaultWords(saveState.why)}). Save the JSON file before you leave.`
              : 'Saved on this device as you work. Sound and marks never leave it by themselves.'
          }
        </p>
        <div class="row">
          <button @click=${this.onJson}>Save all as JSON</button>
        </div>
        <p class="small">
          The JSON file holds everything; its form is written down in a
          <a href="schema/experiment.schema.json" target="_blank" rel="noopener">JSON Schema</a>.
        </p>
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-files': FilesElement;
  }
}
