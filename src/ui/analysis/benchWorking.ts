import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { budgetRows } from '../../report/budgetRows.ts';
import { hidesTheory, stepsWithoutTheory, warningsWithoutTheory } from '../../report/hideTheory.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import type { NoSolution, Solution } from '../../solver/solution.ts';
import { BenchWatch } from '../benchWatch.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './benchFitPicture.ts';
import './benchNext.ts';

/** Every step from lengths to the speed with this experiment's numbers, the fit, and where the uncertainty comes from. */
@customElement('bench-working')
export class BenchWorking extends BenchElement {
  static override styles = [
    sharedStyles,
    css`
      .cards {
        --card: 26rem;
      }
      ol {
        padding-inline-start: 1.5rem;
        display: grid;
        gap: var(--gap-3);
      }
      .formula {
        font-style: italic;
      }
      .result {
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook', 'answers']);

  override render() {
    const { outcome, experiment } = this.session;
    const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
    if (solution === undefined || solution.speedMps === null) {
      return html`<section class="sheet stack" aria-label="Working">
        <h2>Working${workingOut(this.session.isWorkingOut)}</h2>
        <p class="lead">Each step appears here with its numbers as soon as one mark has its length.</p>
        ${this.faults(solution).map((message) => html`<p class="caution">${message}</p>`)}
      </section>`;
    }
    return html`<div class="cards">
      ${this.steps(solution)}
      <bench-fit-picture class="sheet" .session=${this.session}></bench-fit-picture>
      ${this.budget(solution)}
      <bench-next class="sheet" .session=${this.session}></bench-next>
    </div>`;
  }

  /** Why there is no result though there are marks. */
  private faults(solution: NoSolution | undefined): readonly string[] {
    if (solution === undefined) return [];
    return hidesTheory(this.session.experiment)
      ? warningsWithoutTheory(solution)
      : solution.warnings.map(({ message }) => message);
  }

  private steps(solution: Solution) {
    const isHidden = hidesTheory(this.session.experiment);
    const steps = isHidden ? stepsWithoutTheory(solution.working) : solution.working;
    return html`<section class="sheet stack" aria-label="Working">
      <h2>Working${workingOut(this.session.isWorkingOut)}</h2>
      <p class="lead">So that you can follow every step by hand.</p>
      <ol>
        ${steps.map(
          (step) =>
            html`<li>
              <h3>${step.title}</h3>
              <p class="formula">${step.formula}</p>
              <p>${step.numbers}</p>
              <p class="result">${step.result}</p>
            </li>`,
        )}
      </ol>
    </section>`;
  }

  private budget(solution: Solution) {
    const rows = budgetRows(solution.budget);
    if (rows.length === 0) return nothing;
    return html`<section class="sheet stack" aria-label="Uncertainty budget">
      <h2>Where the uncertainty comes from</h2>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">Quantity</th>
              <th scope="col" class="number">Standard uncertainty</th>
              <th scope="col" class="number">Adds to the speed</th>
              <th scope="col" class="number">Share</th>
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              (row) =>
                html`<tr>
                  <th scope="row">${row.quantity}</th>
                  <td class="number">${row.uncertainty}</td>
                  <td class="number">${row.contribution}</td>
                  <td class="number">${row.share}</td>
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-working': BenchWorking;
  }
}
