import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Lesson } from '../../notebook/experiment.ts';
import { readLesson } from '../../notebook/readExperiment.ts';
import { RecordFaults, RecordReader } from '../../notebook/recordReader.ts';
import { LONGEST } from '../../limits/longest.ts';
import { wellFormed } from '../../limits/texts.ts';
import { lessonFault, lessonHash, planOf } from '../../notebook/lessonLink.ts';
import { lessonFaultWords } from '../../words/lessonLink.ts';
import type { Session } from '../../session/session.ts';
import { lessonWords } from '../../words/page/records.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Name of the form among the drafts. */
const DRAFT = 'lesson';

/** Makes a lesson link: forks, tube and ends as they are now, a task, and what is kept back. */
@customElement('bench-lesson')
export class LessonElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      textarea,
      input[readonly] {
        inline-size: 100%;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private link = '';
  /** Why no link can be made. */
  @state() private fault: string | null = null;
  @query('textarea') private task!: HTMLTextAreaElement;
  @query('#expected') private expected!: HTMLInputElement;
  @query('#theory') private theory!: HTMLInputElement;
  @query('#truth') private truth!: HTMLInputElement;
  protected readonly watch = new SessionWatch(this, ['notebook'], () => this.followUp());

  /** Whose form is shown. */
  private shownId: string | null = null;

  override updated(): void {
    const { id } = this.session.experiment;
    if (id !== this.shownId) this.bringBack(id);
  }

  /** The form as it was left for this experiment; empty where nothing was typed. */
  private bringBack(id: string): void {
    this.shownId = id;
    const form = readForm(this.session.drafts.get(id, DRAFT));
    this.task.value = form.task;
    this.expected.checked = form.hideExpected;
    this.theory.checked = form.hideTheory;
    this.truth.checked = form.hideTruth;
    this.followUp();
  }

  private get form(): Lesson {
    return {
      task: this.task.value,
      hideExpected: this.expected.checked,
      hideTheory: this.theory.checked,
      hideTruth: this.truth.checked,
    };
  }

  private onInput(): void {
    this.session.drafts.set(this.session.experiment.id, DRAFT, JSON.stringify(this.form));
    this.followUp();
  }

  /** A link once made never stays behind what the form and the apparatus say. */
  private followUp(): void {
    this.requestUpdate();
    if (this.link !== '') this.onMake();
  }

  private onMake(): void {
    const plan = planOf(this.session.experiment, { ...this.form, task: wellFormed(this.task.value.trim()) });
    const fault = lessonFault(plan);
    this.fault = fault === null ? null : lessonFaultWords(fault);
    this.link = fault === null ? location.href.split('#').at(0) + lessonHash(plan) : '';
  }

  private async onCopy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(this.link);
      this.session.tell('info', lessonWords.copied);
    } catch {
      this.session.tell('problem', lessonWords.notCopied);
    }
  }

  override render() {
    return html`<section class="stack" aria-label=${lessonWords.heading} @input=${this.onInput}>
      <h2>${lessonWords.heading}</h2>
      <p class="lead">${lessonWords.lead}</p>
      <label>${lessonWords.task}<textarea rows="3" maxlength=${LONGEST.task}></textarea></label>
      <label class="row"><input type="checkbox" id="expected" />${lessonWords.hideExpected}</label>
      <label class="row"><input type="checkbox" id="theory" />${lessonWords.hideTheory}</label>
      <label class="row"><input type="checkbox" id="truth" />${lessonWords.hideTruth}</label>
      <p class="small">${lessonWords.apart}</p>
      <p><button @click=${this.onMake}>${lessonWords.make}</button></p>
      ${this.fault === null ? nothing : html`<p class="fault" role="alert">${this.fault}</p>`}
      ${
        this.link === ''
          ? nothing
          : html`<label>${lessonWords.link}<input readonly .value=${this.link} /></label>
              <p><button @click=${this.onCopy}>${lessonWords.copy}</button></p>`
      }
    </section>`;
  }
}

/** An empty form where there is none, or one that isn't understood. */
function readForm(draft: string | null): Lesson {
  const empty: Lesson = { task: '', hideExpected: false, hideTheory: false, hideTruth: false };
  try {
    const reader = new RecordReader('', JSON.parse(draft ?? 'null'), new RecordFaults());
    const form = readLesson(reader);
    return reader.faults.all.length === 0 ? form : empty;
  } catch {
    return empty;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-lesson': LessonElement;
  }
}
