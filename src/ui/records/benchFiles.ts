import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { experimentJson, fileStem } from '../../report/experimentJson.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { saveFile } from '../saveFile.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { readExperimentFile } from './readExperimentFile.ts';

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
      input[type='file'] {
        padding: var(--gap-2);
      }
      .fault-list li {
        margin-inline-start: 1.25rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  @state() private faults: readonly string[] = [];
  protected readonly watch = new BenchWatch(this, ['notebook', 'capture']);

  private onJson(): void {
    const { experiment } = this.session;
    saveFile(`${fileStem(experiment)}.json`, 'application/json', experimentJson(experiment));
  }

  private async onOpen(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (file === undefined) return;
    const reading = await readExperimentFile(file);
    input.value = '';
    this.faults = reading.kind === 'faults' ? reading.faults : [];
    if (reading.kind !== 'experiment') return;
    await this.session.open(reading.experiment, 'open file');
    this.session.tell(
      'info',
      `“${reading.experiment.title}” is open. What was open before is in the list, or a step back.`,
    );
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
        <label>Title <input maxlength="120" .value=${experiment.title} @change=${this.onTitle} /></label>
        <label
          >Note
          <textarea rows="3" maxlength="10000" .value=${experiment.note} @change=${this.onNote}></textarea>
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
        <label
          >Open a JSON file
          <input
            type="file"
            accept=".json,application/json"
            aria-label="Experiment file to open"
            @change=${this.onOpen}
        /></label>
        <p class="small">
          The JSON file holds everything; its form is written down in a
          <a href="schema/experiment.schema.json">JSON Schema</a>.
        </p>
        ${
          this.faults.length === 0
            ? nothing
            : html`<div role="alert">
                <p class="fault">This file can’t be opened; nothing was changed. What is wrong:</p>
                <ul class="fault-list">
                  ${this.faults.slice(0, 12).map((fault) => html`<li>${fault}</li>`)}
                </ul>
                ${this.faults.length > 12 ? html`<p>…and ${this.faults.length - 12} more.</p>` : nothing}
              </div>`
        }
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-files': BenchFiles;
  }
}
