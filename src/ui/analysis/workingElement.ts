import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { budgetFacts, budgetRows } from '../../words/budgetLines.ts';
import type { BudgetRow } from '../../words/budgetLines.ts';
import { hidesTheory, stepsWithoutTheory, warningsWithoutTheory } from '../../report/hideTheory.ts';
import type { Session } from '../../session/session.ts';
import type { NoSolution, Solution } from '../../solver/solution.ts';
import { laterWords } from '../../words/inUse.ts';
import { markNames } from '../../words/markNames.ts';
import { solverWarningWords } from '../../words/solverWarnings.ts';
import { letterWords } from '../../words/workingLetters.ts';
import { workingStepWords } from '../../words/workingSteps.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './circleElement.ts';
import './fitPictureElement.ts';
import './nextElement.ts';

/** Every step from lengths to the speed with this experiment's numbers, the fit, and where the uncertainty comes from. */
@customElement('bench-working')
export class WorkingElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .cards {
        /* Never three beside each other: the budget below the first two would leave a hole. */
        --card: max(26rem, 40%);
      }
      /* Shared lines, and those below a cell, would lie under the column that stays. */
      .budget table {
        border-collapse: separate;
        border-spacing: 0;
      }
      .budget tr * {
        border-block-end: 0;
      }
      .budget tbody tr * {
        border-block-start: 1px solid var(--line);
      }
      ol {
        padding-inline-start: 1.5rem;
        display: grid;
        gap: var(--gap-3);
      }
      /* Eight columns want the whole width; on a phone they scroll in their own box, the quantity staying in sight. */
      .budget {
        grid-column: 1 / -1;
      }
      .budget tbody th {
        min-inline-size: 9rem;
        font-weight: 400;
      }
      .budget th:first-child {
        position: sticky;
        inset-inline-start: 0;
        background: var(--sheet);
      }
      .budget dl {
        display: grid;
        gap: var(--gap-2);
      }
      .budget dl .row {
        align-items: baseline;
        row-gap: 0;
      }
      .budget td {
        white-space: nowrap;
      }
      .letters {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--gap-1) var(--gap-3);
      }
      .letters dt,
      .formula {
        font-style: italic;
      }
      .result {
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { outcome, experiment } = this.session;
    const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
    if (solution === undefined || solution.speedMps === null) {
      return html`<div class="cards">
        <section class="sheet stack" aria-label=${laterWords.working.heading}>
          <h2>${laterWords.working.heading}${workingOut(this.session.isWorkingOut)}</h2>
          <p class="lead">${laterWords.working.empty}</p>
          ${this.faults(solution).map((message) => html`<p class="caution">${message}</p>`)}
        </section>
        ${this.circle()}
      </div>`;
    }
    return html`<div class="cards">
      ${this.steps(solution)}
      <bench-fit-picture class="sheet" .session=${this.session}></bench-fit-picture>
      ${this.budget(solution)} ${this.circle()}
      <bench-next class="sheet" .session=${this.session}></bench-next>
    </div>`;
  }

  private circle() {
    return html`<bench-circle class="sheet" .session=${this.session}></bench-circle>`;
  }

  /** Why there is no result though there are marks. */
  private faults(solution: NoSolution | undefined): readonly string[] {
    if (solution === undefined) return [];
    const { experiment } = this.session;
    const warnings = hidesTheory(experiment) ? warningsWithoutTheory(solution) : solution.warnings;
    return solverWarningWords(warnings, markNames(experiment));
  }

  private steps(solution: Solution) {
    const isHidden = hidesTheory(this.session.experiment);
    const steps = isHidden ? stepsWithoutTheory(solution.working) : solution.working;
    return html`<section class="sheet stack" aria-label=${laterWords.working.heading}>
      <h2>${laterWords.working.heading}${workingOut(this.session.isWorkingOut)}</h2>
      <p class="lead">${laterWords.working.lead}</p>
      <details>
        <summary>${laterWords.readingHelp.termsHeading}</summary>
        <dl class="letters small">
          ${letterWords(steps).map(
            ({ letter, meaning }) =>
              html`<dt>${letter}</dt>
                <dd>${meaning}</dd>`,
          )}
        </dl>
      </details>
      <ol>
        ${steps.map(workingStepWords).map(
          (step) =>
            html`<li>
              <h3>${step.title}</h3>
              <p class="formula">${step.formula}</p>
              <p>${step.numbers}</p>
              <p class="result">${step.result}</p>
              ${step.why === null ? nothing : html`<p class="small why">${step.why}</p>`}
            </li>`,
        )}
      </ol>
    </section>`;
  }

  private budget(solution: Solution) {
    const rows = budgetRows(solution.budget);
    if (rows.length === 0) return nothing;
    const [first, ...others] = Object.keys(laterWords.budgetColumns) as (keyof BudgetRow)[];
    if (first === undefined) return nothing;
    return html`<section class="sheet stack budget" aria-label=${laterWords.budget.region}>
      <h2>${laterWords.budget.heading}</h2>
      <div class="scroll" tabindex="0" role="region" aria-label=${laterWords.budget.table}>
        <table>
          <thead>
            <tr>
              <th scope="col">${laterWords.budgetColumns[first]}</th>
              ${others.map((column) => html`<th scope="col" class="number">${laterWords.budgetColumns[column]}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              (row) =>
                html`<tr>
                  <th scope="row">${row[first]}</th>
                  ${others.map((column) => html`<td class="number">${row[column]}</td>`)}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <p class="small">${laterWords.budgetLine.types}</p>
      <dl>
        ${budgetFacts(solution).map(
          ({ name, value }) =>
            html`<div class="row">
              <dt class="small">${name}</dt>
              <dd>${value}</dd>
            </div>`,
        )}
      </dl>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-working': WorkingElement;
  }
}
