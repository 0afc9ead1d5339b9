import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LONGEST } from '../../limits/longest.ts';
import { entitle } from '../../notebook/titles.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { saveExperiment } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { TypedTexts } from '../parts/typedTexts.ts';
import type { TypedText } from '../parts/typedTexts.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { laterWords } from '../../words/inUse.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';
import { titleWords } from '../../words/titles.ts';

const TITLE: TypedText = {
  field: 'title',
  step: 'rename',
  read: ({ title }) => title,
  write: entitle,
};
const NOTE: TypedText = {
  field: 'note',
  step: 'write note',
  read: ({ note }) => note,
  write: (experiment, note) => ({ ...experiment, note }),
};

const GROUP: TypedText = {
  field: 'group',
  step: 'name group',
  read: ({ group }) => group,
  write: (experiment, group) => ({ ...experiment, group }),
};
const CLASS_NAME: TypedText = {
  field: 'className',
  step: 'name group',
  read: ({ className }) => className,
  write: (experiment, className) => ({ ...experiment, className }),
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
  private readonly texts = new TypedTexts(this, () => [TITLE, NOTE, GROUP, CLASS_NAME]);
  protected readonly watch = new SessionWatch(this, ['notebook', 'capture']);

  private onJson(): void {
    saveExperiment(this.session.experiment);
  }

  override render() {
    const { experiment, saveState } = this.session;
    const { before, part, after } = laterWords.files.form;
    return html`
      <section class="sheet stack" aria-label=${laterWords.files.heading}>
        <h2>${laterWords.files.heading}</h2>
        <label
          >${laterWords.files.title}
          <input
            maxlength=${LONGEST.title}
            placeholder=${titleWords(experiment)}
            .value=${experiment.title}
            @input=${(event: Event) => this.texts.onInput(event, TITLE)}
            @change=${(event: Event) => this.texts.onLeave(event, TITLE)}
        /></label>
        ${this.line(laterWords.files.group, GROUP, experiment.group)}
        ${this.line(laterWords.files.className, CLASS_NAME, experiment.className)}
        <label
          >${laterWords.files.note}
          <textarea
            rows="3"
            maxlength=${LONGEST.note}
            .value=${experiment.note}
            @input=${(event: Event) => this.texts.onInput(event, NOTE)}
            @change=${(event: Event) => this.texts.onLeave(event, NOTE)}
          ></textarea>
        </label>
        <p class="lead">
          ${saveState.kind === 'refused' ? laterWords.files.notSaved(storageFaultWords(saveState.why)) : laterWords.files.saved}
        </p>
        <div class="row">
          <button @click=${this.onJson}>${laterWords.files.save}</button>
        </div>
        <p class="small">
          ${before}<a href="schema/experiment.schema.json" target="_blank" rel="noopener">${part}</a>${after}
        </p>
      </section>
    `;
  }

  private line(name: string, text: TypedText, value: string) {
    return html`<label
      >${name}
      <input
        maxlength=${LONGEST.name}
        .value=${value}
        @input=${(event: Event) => this.texts.onInput(event, text)}
        @change=${(event: Event) => this.texts.onLeave(event, text)}
    /></label>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-files': FilesElement;
  }
}
