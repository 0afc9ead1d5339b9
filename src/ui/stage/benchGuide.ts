import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { truthWords } from '../../report/truthWords.ts';
import type { BenchPractice } from '../../session/benchPractice.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { presentSolution } from '../../session/benchTurnRound.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { guideSteps } from './guideSteps.ts';

/** Leads a first visitor from the door to a speed of sound, and at the end shows the truth. */
@customElement('bench-guide')
export class BenchGuide extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      details {
        border-inline-start: 5px solid var(--room);
        background: var(--sheet);
        padding: var(--gap-2) var(--gap-4);
      }
      /* The longest step has its place from the start. */
      @media (max-width: 1180px) {
        details {
          min-block-size: 4.25rem;
        }
      }
      @media (max-width: 760px) {
        details {
          min-block-size: 5.5rem;
          padding-inline: var(--gap-3);
        }
      }
      summary {
        min-block-size: 1.75rem;
        cursor: pointer;
      }
      .now {
        font-weight: 600;
      }
      .count {
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  @property({ attribute: false }) practice!: BenchPractice;
  @state() private isTruthShown = false;
  private shown = '';
  protected readonly watch = new BenchWatch(this, ['live', 'capture', 'notebook'], () => this.onChange());

  private onChange(): void {
    const { experiment, trace, isListening } = this.session;
    const next = guideSteps(experiment, trace, isListening)
      .map((step) => step.isDone)
      .join();
    // Whatever changes in the notebook may change the truth's comparison; the trace alone rarely changes a step.
    if (next !== this.shown || !isListening) this.requestUpdate();
    this.shown = next;
  }

  private onTruth(): void {
    this.isTruthShown = !this.isTruthShown;
  }

  override render() {
    const { experiment, trace, isListening, outcome } = this.session;
    const steps = guideSteps(experiment, trace, isListening);
    const done = steps.filter((step) => step.isDone).length;
    const next = steps.find((step) => !step.isDone);
    const solution = presentSolution(experiment, outcome);
    return html`<details open>
      <summary>
        <span class="count">Guide, ${done} of ${steps.length}:</span>
        <span class="now" role="status"
          >${next?.words ?? 'Done: the speed stands above. More marks make it more certain.'}</span
        >
      </summary>
      ${
        solution === null || experiment.lesson?.hideTruth === true
          ? nothing
          : html`<p class="row">
              <button aria-expanded=${this.isTruthShown ? 'true' : 'false'} @click=${this.onTruth}>
                ${this.isTruthShown ? 'Hide the truth' : 'Show the truth'}
              </button>
              ${
                this.isTruthShown ? html`<span>${truthWords(this.practice.column, solution)}</span>` : nothing
              }
            </p>`
      }
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-guide': BenchGuide;
  }
}
