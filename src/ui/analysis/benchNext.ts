import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { gainWords, nextWords } from '../../report/nextWords.ts';
import { nextMarksHere } from '../../session/benchNext.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';

const SHOWN = 4;

/** Which further mark would make the result more certain, and by how much. */
@customElement('bench-next')
export class BenchNext extends BenchElement {
  static override styles = [
    sharedStyles,
    css`
      li {
        margin-inline-start: 1.25rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook', 'answers']);

  override render() {
    const { experiment } = this.session;
    const isWithheld = experiment.lesson?.hideExpected === true;
    const offset = experiment.rule.zeroOffsetM;
    const { value, isPending } = this.session.answers.ask(
      { kind: 'next', about: experiment, ask: null },
      (about, _ask, known) => nextMarksHere(about, known),
    );
    const marks = (value ?? []).slice(0, SHOWN);
    return html`<section class="stack" aria-label="What next">
      <h2>What next${workingOut(isPending)}</h2>
      <p class="lead">Marks that would take most away from the uncertainty, with the forks you have.</p>
      ${
        marks.length === 0 && !isPending
          ? html`<p>Mark one resonance with its length first.</p>`
          : html`<ol>
              ${marks.map(
                (mark) =>
                  html`<li>
                    ${nextWords(mark, offset, isWithheld)}: <strong>${gainWords(mark).gain}</strong>,
                    ${gainWords(mark).left}
                  </li>`,
              )}
            </ol>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-next': BenchNext;
  }
}
