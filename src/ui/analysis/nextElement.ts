import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { laterWords } from '../../words/inUse.ts';
import { gainWords, nextWords } from '../../words/nextMarks.ts';
import { nextMarksHere } from '../../session/experiment/nextMarks.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';

const SHOWN = 4;

/** Which further mark would make the result more certain, and by how much. */
@customElement('bench-next')
export class NextElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      li {
        margin-inline-start: 1.25rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { experiment } = this.session;
    const isWithheld = experiment.lesson?.hideExpected === true;
    const offset = experiment.rule.zeroOffsetM;
    const { value, isPending } = this.session.answers.ask(
      { kind: 'next', about: experiment, ask: null },
      (about, _ask, known) => nextMarksHere(about, known),
    );
    const marks = (value ?? []).slice(0, SHOWN);
    return html`<section class="stack" aria-label=${laterWords.nextMarks.heading}>
      <h2>${laterWords.nextMarks.heading}${workingOut(isPending)}</h2>
      <p class="lead">${laterWords.nextMarks.lead}</p>
      ${
        marks.length === 0 && !isPending
          ? html`<p>${laterWords.nextMarks.none}</p>`
          : html`<ul>
              ${marks.map(
                (mark) =>
                  html`<li>
                    ${nextWords(mark, offset, isWithheld)}<br />
                    <strong>${gainWords(mark).gain}</strong> ${gainWords(mark).left}
                  </li>`,
              )}
            </ul>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-next': NextElement;
  }
}
