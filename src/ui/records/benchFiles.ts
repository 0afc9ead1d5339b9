import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LONGEST } from '../../limits/longest.ts';
import { experimentJson, fileStem } from '../../report/experimentJson.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { saveFile } from '../saveFile.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Files out and in. Nothing leaves this device by itself. */
@customElement('bench-files')
export class BenchFiles extends LitElement {
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

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook', 'capture']);

  private onJson(): void {
    const { experiment } = this.session;
    saveFile(`${fileStem(experiment)}.json`, 'application/json', experimentJson(experiment));
  }

  private onTitle(event: Event): void {
    const title = (event.target as HTMLInputElement).value;
    this.session.change('rename', (experiment) => ({ ...experiment, title }));
  }

  private onNote(event: Event): void {
    const note = (event.target as HTMLTextAreaElement).value;
    this.session.change('write note', (experiment) => ({ ...experiment, note }));
  }

  override render() {
    const { experiment, saveState } = this.session;
    return html`
      <section class="sheet stack" aria-label="This experiment">
        <h2>This experiment</h2>
        <label
          >Title <input maxlength=${LONGEST.title} .value=${experiment.title} @change=${this.onTitle}
        /></label>
        <label
          >Note
          <textarea
            rows="3"
            maxlength=${LONGEST.note}
            .value=${experiment.note}
            @change=${this.onNote}
          ></textarea>
        </label>
        <p class="lead">
          ${
            saveState.kind === 'refused'
              ? `Not saved on this device (${saveState.message}). Save the JSON file before you leave.`
              : 'Saved on this device as you work. Sound and marks never leave it by themselves.'
          }
        </p>
        <div class="row">
          <button @click=${this.onJson}>Save all as JSON</button>
        </div>
        <p class="small">
          The JSON file holds everything; its form is written down in a
          <a href="schema/experiment.schema.json">JSON Schema</a>.
        </p>
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-files': BenchFiles;
  }
}
