import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Lesson } from '../../notebook/experiment.ts';
import { readLesson } from '../../notebook/readExperiment.ts';
import { RecordFaults, RecordReader } from '../../notebook/recordReader.ts';
import { LONGEST } from '../../limits/longest.ts';
import { LONGEST_CODE } from '../../limits/sizes.ts';
import { wellFormed } from '../../limits/texts.ts';
import { keepsBack } from '../../notebook/keptBack.ts';
import { newRevealCode, revealDigest } from '../../notebook/revealCode.ts';
import { lessonFault, lessonHash, planOf } from '../../notebook/lessonLink.ts';
import { laterWords } from '../../words/inUse.ts';
import { LANGUAGES, LANGUAGE_TAGS } from '../../words/language.ts';
import { lessonFaultWords } from '../../words/lessonLink.ts';
import type { Session } from '../../session/session.ts';
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
      label:not(.row) {
        display: grid;
        justify-items: start;
      }
      textarea,
      input[readonly] {
        inline-size: 100%;
      }
      .key {
        font-size: 1.5rem;
        letter-spacing: 0.1em;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private links: { readonly lesson: string; readonly reveal: string | null } | null = null;
  /** Which link is shown as a code. */
  @state() private shownCode: 'lesson' | 'reveal' | null = null;
  /** Why no link can be made. */
  @state() private fault: string | null = null;
  @query('textarea') private task!: HTMLTextAreaElement;
  @query('#language') private language!: HTMLInputElement;
  @query('#expected') private expected!: HTMLInputElement;
  @query('#theory') private theory!: HTMLInputElement;
  @query('#truth') private truth!: HTMLInputElement;
  protected readonly watch = new SessionWatch(this, ['notebook'], () => this.followUp());

  /** Whose form is shown. */
  private shownId: string | null = null;
  /** What shows the class what the lesson keeps back; kept with the form. */
  private revealCode = '';
  /** Counts what was asked for, so that an older link never takes the place of a newer one. */
  private made = 0;

  override updated(): void {
    const { id } = this.session.experiment;
    if (id !== this.shownId) this.bringBack(id);
  }

  /** The form as it was left for this experiment; empty where nothing was typed. */
  private bringBack(id: string): void {
    this.shownId = id;
    const { revealCode, ...form } = readForm(this.session.drafts.get(id, DRAFT));
    this.task.value = form.task;
    this.language.value = form.language ?? '';
    this.expected.checked = form.hideExpected;
    this.theory.checked = form.hideTheory;
    this.truth.checked = form.hideTruth;
    this.revealCode =
      revealCode === '' ? newRevealCode(crypto.getRandomValues(new Uint32Array(6))) : revealCode;
    this.followUp();
  }

  private get form(): Lesson {
    const language = wellFormed(this.language.value.trim());
    return {
      task: this.task.value,
      hideExpected: this.expected.checked,
      hideTheory: this.theory.checked,
      hideTruth: this.truth.checked,
      ...(language === '' ? {} : { language }),
    };
  }

  private onInput(): void {
    const draft = JSON.stringify({ ...this.form, revealCode: this.revealCode });
    this.session.drafts.set(this.session.experiment.id, DRAFT, draft);
    this.followUp();
  }

  /** A link once made never stays behind what the form and the apparatus say. */
  private followUp(): void {
    this.requestUpdate();
    if (this.links !== null) void this.make();
  }

  private onMake(): void {
    // The code belongs to the link from now on.
    this.onInput();
    void this.make();
  }

  private async make(): Promise<void> {
    this.made += 1;
    const number = this.made;
    const form = { ...this.form, task: wellFormed(this.task.value.trim()) };
    const reveal = keepsBack(form) ? { reveal: revealDigest(this.revealCode) } : {};
    const plan = planOf(this.session.experiment, { ...form, ...reveal });
    const hash = await lessonHash(plan);
    if (number !== this.made) return;
    const fault = lessonFault(plan, hash);
    this.fault = fault === null ? null : lessonFaultWords(fault);
    const page = location.href.split('#').at(0) ?? '';
    this.links =
      fault === null
        ? { lesson: page + hash, reveal: keepsBack(form) ? `${page}#reveal=${this.revealCode}` : null }
        : null;
  }

  private async onCopy(link: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(link);
      this.session.tell('info', laterWords.lesson.copied);
    } catch {
      this.session.tell('problem', laterWords.lesson.notCopied);
    }
  }

  private async onCode(which: 'lesson' | 'reveal'): Promise<void> {
    await import('../parts/codeElement.ts');
    this.shownCode = this.shownCode === which ? null : which;
  }

  override render() {
    return html`<section class="stack" aria-label=${laterWords.lesson.heading} @input=${this.onInput}>
      <h2>${laterWords.lesson.heading}</h2>
      <p class="lead">${laterWords.lesson.lead}</p>
      <label>${laterWords.lesson.task}<textarea rows="3" maxlength=${LONGEST.task}></textarea></label>
      <label
        >${laterWords.lesson.language}<input
          id="language"
          list="languages"
          maxlength=${LONGEST.lessonKey}
          size="8"
      /></label>
      <datalist id="languages">
        ${LANGUAGE_TAGS.map((tag) => html`<option value=${tag}>${LANGUAGES[tag].name}</option>`)}
      </datalist>
      <label class="row"><input type="checkbox" id="expected" />${laterWords.lesson.hideExpected}</label>
      <label class="row"><input type="checkbox" id="theory" />${laterWords.lesson.hideTheory}</label>
      <label class="row"><input type="checkbox" id="truth" />${laterWords.lesson.hideTruth}</label>
      <p class="small">${laterWords.lesson.apart}</p>
      <p class="small">${laterWords.lesson.limits}</p>
      <p><button @click=${this.onMake}>${laterWords.lesson.make}</button></p>
      ${this.fault === null ? nothing : html`<p class="fault" role="alert">${this.fault}</p>`}
      ${this.links === null ? nothing : this.shown(this.links)}
    </section>`;
  }

  private shown({ lesson, reveal }: { readonly lesson: string; readonly reveal: string | null }) {
    return html`<label>${laterWords.lesson.link}<input readonly .value=${lesson} /></label>
      <div class="row">
        <button @click=${() => this.onCopy(lesson)}>${laterWords.lesson.copy}</button>
        <button aria-expanded=${this.shownCode === 'lesson'} @click=${() => this.onCode('lesson')}>
          ${laterWords.lesson.code}
        </button>
      </div>
      ${this.shownCode === 'lesson' ? this.code(lesson, laterWords.lesson.codeName) : nothing}
      ${
        reveal === null
          ? nothing
          : html`<h3>${laterWords.lesson.reveal}</h3>
              <p>${laterWords.lesson.revealCode}: <strong class="key">${this.revealCode}</strong></p>
              <label>${laterWords.lesson.revealLink}<input readonly .value=${reveal} /></label>
              <div class="row">
                <button @click=${() => this.onCopy(reveal)}>${laterWords.lesson.copyReveal}</button>
                <button aria-expanded=${this.shownCode === 'reveal'} @click=${() => this.onCode('reveal')}>
                  ${laterWords.lesson.showRevealCode}
                </button>
              </div>
              ${this.shownCode === 'reveal' ? this.code(reveal, laterWords.lesson.revealName) : nothing}`
      }`;
  }

  private code(link: string, name: string) {
    return link.length > LONGEST_CODE
      ? html`<p class="caution">${laterWords.lesson.tooLongForCode}</p>`
      : html`<bench-code .links=${[link]} name=${name}></bench-code>`;
  }
}

/** An empty form where there is none, or one that isn't understood. */
function readForm(draft: string | null): Lesson & { readonly revealCode: string } {
  const empty = { task: '', hideExpected: false, hideTheory: false, hideTruth: false, revealCode: '' };
  try {
    const reader = new RecordReader('', JSON.parse(draft ?? 'null'), new RecordFaults());
    const form = readLesson(reader);
    const revealCode =
      reader.raw('revealCode') === undefined ? '' : reader.text('revealCode', LONGEST.lessonKey);
    return reader.faults.all.length === 0 ? { ...form, revealCode } : empty;
  } catch {
    return empty;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-lesson': LessonElement;
  }
}
