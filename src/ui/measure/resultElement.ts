import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { nextHint } from '../../words/nextMarks.ts';
import { factsWithoutTheory, hidesTheory } from '../../report/hideTheory.ts';
import { nextMarksHere } from '../../session/experiment/nextMarks.ts';
import { resultWords } from '../../words/page/measure.ts';
import { resultLines } from '../../words/result.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** The speed of sound at the present place, as sure as the marks make it. */
@customElement('bench-result')
export class ResultElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .stack {
        gap: var(--gap-1);
      }
      .speed {
        font-size: clamp(1.75rem, 1.2rem + 2.4vw, 3rem);
        line-height: 1.1;
        font-weight: 600;
        letter-spacing: -0.02em;
      }
      .none {
        font-weight: 300;
      }
      .unit {
        font-size: 0.55em;
        font-weight: 400;
        letter-spacing: 0;
        white-space: nowrap;
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
      <section class="stack" aria-label=${resultWords.region}>
        <h2 class="small">${resultWords.heading}${workingOut(this.session.isWorkingOut)}</h2>
        ${
          lines === null || lines.speed === null
            ? html`<p class="speed none">
                ${resultWords.none} <span class="unit">${resultWords.unit}</span>
              </p>`
            : html`<p class="speed" id="speed">
                ${lines.speed.value} <span class="unit">${resultWords.uncertainty(lines.speed)}</span>
              </p>`
        }
        ${lines === null ? html`<p class="lead">${resultWords.lead}</p>` : nothing}
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
        ${hint === null ? nothing : html`<p class="small">${hint}</p>`}
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-result': ResultElement;
  }
}
