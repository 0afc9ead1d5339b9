import { css, html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { StorageError } from '../../notebook/storageFault.ts';
import { throwLater } from '../../notebook/throwLater.ts';
import { LONGEST } from '../../limits/longest.ts';
import type { Session } from '../../session/session.ts';
import { experimentList } from '../../session/experiment/experimentList.ts';
import type { ExperimentEntry } from '../../session/experiment/experimentList.ts';
import { laterWords } from '../../words/inUse.ts';
import { entryWords } from '../../words/page/records.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { AskElement } from '../parts/askElement.ts';
import { saveFile } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/askElement.ts';
import { mendedNote } from '../../words/mended.ts';
import { recordFaultWords } from '../../words/recordFaults.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';
import { titleWords } from '../../words/titles.ts';

/** Every experiment kept in this browser: open, rename, duplicate, delete and bring back. */
@customElement('bench-experiments')
export class ExperimentsElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      ul {
        list-style: none;
        display: grid;
        gap: var(--gap-2);
      }
      li {
        display: grid;
        gap: var(--gap-1);
        border-inline-start: 5px solid var(--line);
        padding-inline-start: var(--gap-3);
      }
      li.open {
        border-inline-start-color: var(--ink);
      }
      .title {
        font-weight: 600;
        overflow-wrap: anywhere;
      }
      .tools button {
        font-size: var(--text-small);
        padding-inline: var(--gap-2);
      }
      summary {
        min-block-size: var(--target);
        cursor: pointer;
        align-content: center;
      }
      form input {
        flex: 1 1 10rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private entries: readonly ExperimentEntry[] = [];
  /** Why the list can't be read; null where it can. */
  @state() private listFault: string | null = null;
  @state() private renamedId: string | null = null;
  @query('bench-ask') private asking!: AskElement;
  private isLoading = false;
  private isStale = false;
  private turn: Promise<void> = Promise.resolve();
  protected readonly watch = new SessionWatch(this, ['keeping', 'notebook'], () => void this.load());

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  /** Reads the list anew; of many calls while it is read only one more follows. */
  private async load(): Promise<void> {
    this.isStale = true;
    if (this.isLoading) return;
    this.isLoading = true;
    while (this.isStale) {
      this.isStale = false;
      await this.session.keeping.idle();
      const listed = await this.session.keeping.list();
      if ('value' in listed) this.entries = experimentList(listed.value, mendedNote);
      this.listFault = 'fault' in listed ? storageFaultWords(listed.fault) : null;
    }
    this.isLoading = false;
  }

  /** One after the other, however fast the buttons are pressed. */
  private run(action: () => Promise<void> | void): void {
    this.turn = this.turn.then(action).catch((error: unknown) => {
      // What isn't the storage's fault is the page's own: the next one in turn goes on all the same.
      if (!(error instanceof StorageError)) throwLater(error);
      else this.session.tell('problem', laterWords.experiments.notDone(storageFaultWords(error.fault)));
    });
  }

  private onRename(event: Event, entry: ExperimentEntry): void {
    event.preventDefault();
    const title = (event.target as HTMLFormElement).querySelector('input')?.value.trim() ?? '';
    this.renamedId = null;
    if (title !== '' && title !== titleOf(entry))
      this.run(() => this.session.experiments.rename(entry.id, title));
  }

  private async startRename(entry: ExperimentEntry): Promise<void> {
    this.renamedId = entry.id;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>('form input')?.select();
  }

  private async onErase(entry: ExperimentEntry): Promise<void> {
    const isWanted = await this.asking.ask(laterWords.experiments.askErase(titleOf(entry)));
    if (isWanted) this.run(() => this.session.experiments.erase(entry.id));
  }

  private onSaveRecord(entry: ExperimentEntry): void {
    const text = recordText(entry.record);
    if (text === null) {
      this.session.tell('problem', laterWords.experiments.noFile);
    } else saveFile(`record-${entry.id}.json`, 'application/json', text);
  }

  override render() {
    const kept = this.entries.filter((entry) => !entry.isDeleted);
    const deleted = this.entries.filter((entry) => entry.isDeleted);
    return html`<section class="stack" aria-label=${laterWords.experiments.heading}>
      <h2>${laterWords.experiments.heading}</h2>
      <div class="row">
        <button @click=${() => this.run(() => this.session.experiments.openNew(true))}>
          ${laterWords.experiments.newSame}
        </button>
        <button @click=${() => this.run(() => this.session.experiments.openNew(false))}>
          ${laterWords.experiments.newPlain}
        </button>
      </div>
      ${
        this.listFault === null
          ? nothing
          : html`<p class="fault">${laterWords.experiments.noList(this.listFault)}</p>`
      }
      ${
        kept.length === 0 && this.listFault !== null
          ? nothing
          : kept.length === 0
            ? html`<p class="lead">${laterWords.experiments.none}</p>`
            : html`<ul>
                ${this.lines(kept, (entry) => (entry.fault === null ? this.line(entry) : this.faultyLine(entry)))}
              </ul>`
      }
      ${
        deleted.length === 0
          ? nothing
          : html`<details>
              <summary>${laterWords.experiments.deleted(deleted.length)}</summary>
              <ul>
                ${this.lines(deleted, (entry) => this.deletedLine(entry))}
              </ul>
            </details>`
      }
      <bench-ask></bench-ask>
    </section>`;
  }

  /** Each line keeps its own elements when others come and go: a button never turns into another entry's. */
  private lines(entries: readonly ExperimentEntry[], line: (entry: ExperimentEntry) => TemplateResult) {
    return repeat(entries, (entry) => entry.id, line);
  }

  private line(entry: ExperimentEntry) {
    const isOpen = entry.id === this.session.experiment.id;
    if (entry.id === this.renamedId) {
      return html`<li>
        <form class="row" @submit=${(event: Event) => this.onRename(event, entry)}>
          <input
            aria-label=${laterWords.experiments.newTitle}
            maxlength=${LONGEST.title}
            .value=${titleOf(entry)}
          />
          <button>${laterWords.experiments.rename}</button>
          <button type="button" @click=${() => (this.renamedId = null)}>
            ${laterWords.experiments.leaveTitle}
          </button>
        </form>
      </li>`;
    }
    return html`<li class=${isOpen ? 'open' : ''}>
      <span class="title">${titleOf(entry)}</span>
      <span class="small">${factsOf(entry, isOpen)}</span>
      <div class="row tools">
        <button
          ?disabled=${isOpen}
          aria-label=${laterWords.experiments.openNamed(titleOf(entry))}
          @click=${() => this.run(() => this.session.experiments.openStored(entry.id))}
        >
          ${laterWords.experiments.open}
        </button>
        <button
          aria-label=${laterWords.experiments.renameNamed(titleOf(entry))}
          @click=${() => void this.startRename(entry)}
        >
          ${laterWords.experiments.rename}
        </button>
        <button
          aria-label=${laterWords.experiments.duplicateNamed(titleOf(entry))}
          @click=${() => this.run(() => this.session.experiments.duplicate(entry.id))}
        >
          ${laterWords.experiments.duplicate}
        </button>
        <button
          aria-label=${laterWords.experiments.deleteNamed(titleOf(entry))}
          @click=${() => this.run(() => this.session.experiments.putAway(entry.id))}
        >
          ${laterWords.experiments.delete}
        </button>
      </div>
    </li>`;
  }

  private deletedLine(entry: ExperimentEntry) {
    return html`<li>
      <span class="title">${titleOf(entry)}</span>
      <span class="small">${factsOf(entry, false)}</span>
      <div class="row tools">
        <button
          aria-label=${laterWords.experiments.bringBackNamed(titleOf(entry))}
          @click=${() => this.run(() => this.session.experiments.bringBack(entry.id))}
        >
          ${laterWords.experiments.bringBack}
        </button>
        <button
          aria-label=${laterWords.experiments.eraseNamed(titleOf(entry))}
          @click=${() => void this.onErase(entry)}
        >
          ${laterWords.experiments.erase}
        </button>
      </div>
    </li>`;
  }

  private faultyLine(entry: ExperimentEntry) {
    return html`<li>
      <span class="title">${titleOf(entry)}</span>
      <span class="fault">${entry.fault === null ? '' : recordFaultWords(entry.fault)}</span>
      <div class="row tools">
        <button @click=${() => this.run(() => this.onSaveRecord(entry))}>
          ${laterWords.experiments.saveUnreadable}
        </button>
        <button @click=${() => this.run(() => this.session.experiments.putAway(entry.id))}>
          ${laterWords.experiments.delete}
        </button>
      </div>
    </li>`;
  }
}

/** Null for what JSON has no form for: a circle, a tower of lists, or nothing at all. */
function recordText(record: unknown): string | null {
  try {
    return JSON.stringify(record, null, 2) ?? null;
  } catch {
    return null;
  }
}

function titleOf({ titled }: ExperimentEntry): string {
  return titled === null ? laterWords.experiments.unreadable : titleWords(titled);
}

function factsOf({ markCount, placeCount, changedAt }: ExperimentEntry, isOpen: boolean): string {
  return entryWords(markCount, placeCount, changedAt, isOpen);
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-experiments': ExperimentsElement;
  }
}
