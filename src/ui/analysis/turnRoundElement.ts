import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { turnedWords } from '../../words/page/compare.ts';
import { endRatioWords, forkFrequencyWords, gasWords, temperatureWords } from '../../words/turnRound.ts';
import {
  frequencyFromSpeed,
  gasFromSpeed,
  presentSolution,
  temperatureFromSpeed,
} from '../../session/experiment/turnRound.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** The same marks read the other way: what is known and what is sought change places. */
@customElement('bench-turn-round')
export class TurnRoundElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      dt {
        font-weight: 600;
      }
      dd {
        margin-block-end: var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { experiment, outcome } = this.session;
    const solution = presentSolution(experiment, outcome);
    const frequency = this.session.answers.ask(
      { kind: 'forkFrequency', about: experiment, ask: null },
      frequencyFromSpeed,
    );
    return html`<section class="stack" aria-label=${turnedWords.heading}>
      <h2>${turnedWords.heading}${workingOut(frequency.isPending || this.session.isWorkingOut)}</h2>
      <p class="lead">${turnedWords.lead}</p>
      <dl>
        <dt>${turnedWords.fork}</dt>
        <dd>
          ${frequency.isPending && frequency.value === null ? turnedWords.pending : forkFrequencyWords(frequency.value)}
        </dd>
        <dt>${turnedWords.temperature}</dt>
        <dd>${temperatureWords(temperatureFromSpeed(experiment, outcome))}</dd>
        <dt>${turnedWords.gas}</dt>
        <dd>${gasWords(gasFromSpeed(experiment, outcome))}</dd>
        <dt>${turnedWords.ends}</dt>
        <dd>${endRatioWords(solution, experiment.tube.diameterM)}</dd>
      </dl>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-turn-round': TurnRoundElement;
  }
}
