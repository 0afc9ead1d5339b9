import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../../words/inUse.ts';
import { urgentWords } from '../../words/page/stageLine.ts';
import { laterTexts } from '../languageChoice.ts';
import type { PracticeRun } from '../../session/hearing/practiceRun.ts';
import type { Session } from '../../session/session.ts';
import { waitingMarks } from '../../notebook/markList.ts';
import { presentSolution } from '../../session/experiment/turnRound.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { guideSays, guideSteps } from './guideSteps.ts';

/** Leads a first visitor from the door to a speed of sound, and at the end shows the truth. */
@customElement('bench-guide')
export class GuideElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      section {
        border-inline-start: 5px solid var(--room);
        background: var(--sheet);
        padding: 0 var(--gap-3);
      }
      .step {
        display: flex;
        justify-content: space-between;
        align-items: center;
        gap: var(--gap-2) var(--gap-3);
        /* As high as the longest step, and as the button that comes with the first speed. */
        min-block-size: max(calc(2.5 * var(--words)), var(--target));
        font-size: var(--words);
        line-height: 1.25;
      }
      .step button {
        flex: none;
        font-size: var(--text-small);
      }
      @media (max-width: 480px) {
        .step {
          min-block-size: calc(3.75 * var(--words));
        }
      }
      /* Beside the level it is narrow and has that one's height. */
      @media (min-width: 1100px) {
        :host(:not([wide])) .step {
          flex-wrap: wrap;
          align-content: center;
          min-block-size: 8.5rem;
        }
      }
      .count {
        color: var(--ink-soft);
        font-size: var(--text);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) practice!: PracticeRun;
  /** The truth has as many lines as there are marks. */
  @property({ type: Boolean, reflect: true, attribute: 'wide' }) private isTruthShown = false;
  private shown = '';
  protected readonly watch = new SessionWatch(this, ['live', 'capture', 'notebook', 'answers'], () =>
    this.onChange(),
  );

  private onChange(): void {
    this.practice.observe();
    const { done, says } = this.guide();
    const next = `${done} ${says} ${urgentWords(this.session.hearing)}`;
    // Whatever changes in the notebook may change the truth's comparison; the trace alone rarely changes a step.
    if (next !== this.shown || !this.session.hearing.isListening) this.requestUpdate();
    this.shown = next;
  }

  private guide() {
    const { experiment } = this.session;
    const { isListening } = this.session.hearing;
    const { deeds, readings } = this.practice;
    const steps = guideSteps(experiment, deeds, isListening, readings);
    const done = steps.filter((step) => step.isDone).length;
    const isWaiting = waitingMarks(experiment).length > 0;
    return { done, all: steps.length, says: guideSays(steps, deeds, isListening, isWaiting) };
  }

  /** What nobody practised is no reading of the practice column; and a lesson may keep its truth back. */
  private get canCompare(): boolean {
    const { lesson, marks } = this.session.experiment;
    const isPractised =
      this.practice.deeds.isStruck || marks.some(({ evidence }) => evidence?.source === 'practice');
    return isPractised && lesson?.hideTruth !== true;
  }

  private async onTruth(): Promise<void> {
    // What compares comes with the first wish to see it.
    await laterTexts();
    await import('./truthElement.ts');
    this.isTruthShown = !this.isTruthShown;
  }

  override render() {
    const { experiment, outcomeIfAny: outcome } = this.session;
    const { done, all, says } = this.guide();
    const solution = presentSolution(experiment, outcome);
    return html`<section aria-label=${words.guide.heading}>
      <div class="step">
        <p>
          <span class="count">${words.guide.count(done, all)}</span>
          <span role="status"
            >${urgentWords(this.session.hearing) ?? (says === null ? words.guide.done : words.guide.says[says])}</span
          >
        </p>
        ${
          solution === null || !this.canCompare
            ? nothing
            : html`<button aria-expanded=${this.isTruthShown ? 'true' : 'false'} @click=${this.onTruth}>
                ${this.isTruthShown ? words.guide.hideTruth : words.guide.showTruth}
              </button>`
        }
      </div>
      ${
        this.isTruthShown && solution !== null && this.canCompare
          ? html`<bench-truth .session=${this.session} .practice=${this.practice}></bench-truth>`
          : nothing
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-guide': GuideElement;
  }
}
