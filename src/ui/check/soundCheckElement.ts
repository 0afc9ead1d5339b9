import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { isOfRealColumn } from '../../session/hearing/practiceReadings.ts';
import { laterWords } from '../../words/inUse.ts';
import { forkFindingWords, soundFactWords } from '../../words/page/soundCheck.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { AskElement } from '../parts/askElement.ts';
import { PartElement } from '../parts/partElement.ts';
import '../parts/askElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { forkFinding } from './forkFinding.ts';
import { soundFacts } from './soundFacts.ts';

/** Before measuring: is the sound raw, strong enough, how loud is the room, and what is the fork's real pitch? */
@customElement('bench-sound-check')
export class SoundCheckElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--gap-2) var(--gap-4);
      }
      dt {
        color: var(--ink-soft);
      }
      .bad::before {
        content: '✕ ';
        color: var(--alert);
      }
      .good::before {
        content: '✓ ';
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @query('bench-ask') private asking!: AskElement;
  private drawn = 0;
  protected readonly watch = new SessionWatch(this, ['notebook', 'capture', 'live'], () => this.onChange());

  private onChange(): void {
    const now = performance.now();
    if (this.session.hearing.isListening && now - this.drawn < 500) return;
    this.drawn = now;
    this.requestUpdate();
  }

  /** On the practice column its own fork was heard: it takes no real fork's place unasked. */
  private async mayUse(): Promise<boolean> {
    const { hearing, experiment, presentFork } = this.session;
    if (hearing.sourceKind !== 'practice') return true;
    if (presentFork.measuredHz === null && !isOfRealColumn(experiment)) return true;
    return this.asking.ask(laterWords.soundCheck.usePractice);
  }

  private async onUse(): Promise<void> {
    if (!(await this.mayUse())) return;
    const finding = forkFinding(this.session.hearing.trace.soundings, this.session.presentFork);
    if (finding === null) return;
    const { id } = this.session.presentFork;
    this.session.change('use measured pitch', (experiment) => ({
      ...experiment,
      forks: experiment.forks.map((fork) =>
        fork.id === id
          ? {
              ...fork,
              measuredHz: finding.measuredHz,
              measuredStandardUncertaintyHz: finding.standardUncertaintyHz,
            }
          : fork,
      ),
    }));
    this.session.tell('info', laterWords.soundCheck.used);
  }

  override render() {
    const { presentFork } = this.session;
    const { trace, capture } = this.session.hearing;
    const finding = forkFinding(trace.soundings, presentFork);
    return html`<section class="sheet stack" aria-label=${laterWords.soundCheck.heading}>
      <h2>${laterWords.soundCheck.heading}</h2>
      <p class="lead">${laterWords.soundCheck.lead}</p>
      <dl>
        ${soundFacts(capture, trace).map((fact) => {
          const { name, value } = soundFactWords(fact);
          return html`<dt>${name}</dt>
            <dd class=${fact.isGood === null ? '' : fact.isGood ? 'good' : 'bad'}>${value}</dd>`;
        })}
        <dt>${laterWords.soundCheck.fork}</dt>
        <dd>${forkFindingWords(finding)}</dd>
      </dl>
      ${
        finding === null
          ? nothing
          : html`<p><button @click=${this.onUse}>${laterWords.soundCheck.use}</button></p>`
      }
      <p class="caution">${laterWords.soundCheck.caution}</p>
      <bench-ask></bench-ask>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-sound-check': SoundCheckElement;
  }
}
