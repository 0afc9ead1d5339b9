import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { endRatioWords, gasWords, pitchWords, temperatureWords } from '../../report/turnRoundWords.ts';
import {
  gasFromSpeed,
  pitchFromSpeed,
  presentSolution,
  temperatureFromSpeed,
} from '../../session/benchTurnRound.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** The same marks read the other way: what is known and what is sought change places. */
@customElement('bench-turn-round')
export class BenchTurnRound extends BenchElement {
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

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook', 'answers']);

  override render() {
    const { experiment, outcome } = this.session;
    const solution = presentSolution(experiment, outcome);
    const pitch = this.session.answers.ask({ kind: 'pitch', about: experiment, ask: null }, pitchFromSpeed);
    return html`<section class="stack" aria-label="Turn it round">
      <h2>Turn it round${workingOut(pitch.isPending || this.session.isWorkingOut)}</h2>
      <p class="lead">The same lengths, with another quantity as the unknown.</p>
      <dl>
        <dt>Speed known, fork unknown</dt>
        <dd>${pitch.isPending && pitch.value === null ? '…' : pitchWords(pitch.value)}</dd>
        <dt>Fork known, temperature unknown</dt>
        <dd>${temperatureWords(temperatureFromSpeed(experiment, outcome))}</dd>
        <dt>Fork and temperature known, gas unknown</dt>
        <dd>${gasWords(gasFromSpeed(experiment, outcome))}</dd>
        <dt>End correction against the tube’s width</dt>
        <dd>${endRatioWords(solution, experiment.tube.diameterM)}</dd>
      </dl>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-turn-round': BenchTurnRound;
  }
}
