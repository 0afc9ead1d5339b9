import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { nextHint } from '../../words/nextMarks.ts';
import { factsWithoutTheory, hidesTheory } from '../../report/hideTheory.ts';
import { nextMarksHere } from '../../session/experiment/nextMarks.ts';
import { resultLines } from '../../words/result.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What belongs to the speed that stands at the head of the page: its uncertainty, end correction, theory, what next. */
@customElement('bench-result')
export class ResultElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .stack {
        gap: var(--gap-1);
      }
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: 0 var(--gap-3);
        font-size: var(--text-small);
      }
      dt {
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { outcome, experiment } = this.session;
    const here = outcome.places.find((one) => one.placeId === experiment.present.placeId);
    const lines = here === undefined ? null : resultLines(here.solution);
    const facts = lines === null ? [] : hidesTheory(experiment) ? factsWithoutTheory(lines) : lines.facts;
    const next = this.session.answers.ask(
      { kind: 'next', about: experiment, ask: null },
      (about, _ask, known) => nextMarksHere(about, known),
    );
    const hint = nextHint(
      next.value ?? [],
      experiment.rule.zeroOffsetM,
      experiment.lesson?.hideExpected === true,
    );
    return html`
      <section class="stack" aria-label=${words.result.heading}>
        <h2>${words.result.heading}${workingOut(this.session.isWorkingOut)}</h2>
        ${
          facts.length === 0
            ? nothing
            : html`<dl>
                ${facts.map(
                  (fact) =>
                    html`<dt>${fact.name}</dt>
                      <dd>${fact.value}</dd>`,
                )}
              </dl>`
        }
        ${hint === null ? nothing : html`<p>${hint}</p>`}
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-result': ResultElement;
  }
}
