import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { presentSolution } from '../../session/experiment/turnRound.ts';
import type { PracticeRun } from '../../session/hearing/practiceRun.ts';
import { readingsBesideTruth } from '../../session/hearing/practiceVerdict.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { markNames } from '../../words/markNames.ts';
import { readingWords, truthWords } from '../../words/practiceTruth.ts';
import { PartElement } from '../parts/partElement.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What is true of the practice column beside the result and each length that was typed. */
@customElement('bench-truth')
export class TruthElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .stack {
        padding-block-end: var(--gap-2);
      }
      ul {
        margin: 0;
        padding-inline-start: 1.25rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) practice!: PracticeRun;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { experiment, outcomeIfAny: outcome } = this.session;
    const solution = presentSolution(experiment, outcome);
    if (solution === null) return nothing;
    const { column, resonances } = this.practice;
    const readings = readingsBesideTruth(experiment, resonances);
    const nameMark = markNames(experiment);
    return html`<div class="stack">
      <p>${truthWords(column, solution)}</p>
      ${
        readings.length === 0
          ? nothing
          : html`<ul>
                ${readings.map((reading) => html`<li>${readingWords(reading, nameMark)}</li>`)}
              </ul>
              <p>${laterWords.practiceTruth.whyLoudest}</p>`
      }
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-truth': TruthElement;
  }
}
