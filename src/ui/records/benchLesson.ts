import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { lessonHash, planOf } from '../../notebook/lessonLink.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Makes a lesson link: forks, tube and ends as they are now, a task, and what is kept back. */
@customElement('bench-lesson')
export class BenchLesson extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      textarea,
      input[readonly] {
        inline-size: 100%;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  @state() private link = '';
  @query('textarea') private task!: HTMLTextAreaElement;
  @query('#expected') private expected!: HTMLInputElement;
  @query('#theory') private theory!: HTMLInputElement;
  @query('#truth') private truth!: HTMLInputElement;
  protected readonly watch = new BenchWatch(this, ['notebook'], () => this.followUp());

  /** A link once made never stays behind what the form and the apparatus say. */
  private followUp(): void {
    if (this.link !== '') this.onMake();
  }

  private onMake(): void {
    const plan = planOf(this.session.experiment, {
      task: this.task.value.trim(),
      hideExpected: this.expected.checked,
      hideTheory: this.theory.checked,
      hideTruth: this.truth.checked,
    });
    this.link = location.href.split('#').at(0) + lessonHash(plan);
  }

  private async onCopy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(this.link);
      this.session.tell('info', 'The lesson link was copied.');
    } catch {
      this.session.tell('problem', 'The browser didn’t allow copying: mark the link and copy it by hand.');
    }
  }

  override render() {
    return html`<section class="stack" aria-label="Lesson link" @input=${this.followUp}>
      <h2>Lesson link</h2>
      <p class="lead">
        For teachers: the forks, the tube and the column as they are set now, as a link for the class. It
        holds no marks and no names.
      </p>
      <label>What to measure<textarea rows="3" maxlength="1000"></textarea></label>
      <label class="row"><input type="checkbox" id="expected" />Hide where resonances are expected</label>
      <label class="row"><input type="checkbox" id="theory" />Hide theory’s speed</label>
      <label class="row"><input type="checkbox" id="truth" />Hide the practice column’s truth</label>
      <p class="small">
        The last two are separate: with theory hidden, “Show the truth” still gives the speed of sound away to
        whoever practises. Tick both to keep it back everywhere.
      </p>
      <p><button @click=${this.onMake}>Make the link</button></p>
      ${
        this.link === ''
          ? nothing
          : html`<label>Link<input readonly .value=${this.link} /></label>
              <p><button @click=${this.onCopy}>Copy the link</button></p>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-lesson': BenchLesson;
  }
}
