import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { laterWords } from '../../words/inUse.ts';
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
    return html`<section class="stack" aria-label=${laterWords.turned.heading}>
      <h2>${laterWords.turned.heading}${workingOut(frequency.isPending || this.session.isWorkingOut)}</h2>
      <p class="lead">${laterWords.turned.lead}</p>
      <dl>
        <dt>${laterWords.turned.fork}</dt>
        <dd>
          ${frequency.isPending && frequency.value === null ? laterWords.turned.pending : forkFrequencyWords(frequency.value)}
        </dd>
        <dt>${laterWords.turned.temperature}</dt>
        <dd>${temperatureWords(temperatureFromSpeed(experiment, outcome))}</dd>
        <dt>${laterWords.turned.gas}</dt>
        <dd>${gasWords(gasFromSpeed(experiment, outcome))}</dd>
        <dt>${laterWords.turned.ends}</dt>
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
