import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { forkFinding, soundFacts } from './soundFacts.ts';
import type { Session } from '../../session/session.ts';
import { isOfRealColumn } from '../../session/hearing/practiceReadings.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { AskElement } from '../parts/askElement.ts';
import { PartElement } from '../parts/partElement.ts';
import '../parts/askElement.ts';
import { sharedStyles } from '../sharedStyles.ts';

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
    return this.asking.ask({
      heading: 'Use the pitch of the practice fork?',
      message:
        'What was heard is the practice fork. Its pitch would count for this experiment’s fork, for marks made with a real one too.',
      no: 'Leave the fork as it is',
      yes: 'Use it',
    });
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
    this.session.tell('info', 'The measured pitch now counts in the fit.');
  }

  override render() {
    const { presentFork } = this.session;
    const { trace, capture } = this.session.hearing;
    const finding = forkFinding(trace.soundings, presentFork);
    return html`<section class="sheet stack" aria-label="Sound check">
      <h2>Sound check</h2>
      <p class="lead">
        Listen, keep quiet for three seconds, then strike the fork and hold it away from the tube.
      </p>
      <dl>
        ${soundFacts(capture, trace).map(
          (fact) =>
            html`<dt>${fact.name}</dt>
              <dd class=${fact.isGood === null ? '' : fact.isGood ? 'good' : 'bad'}>${fact.value}</dd>`,
        )}
        <dt>Fork</dt>
        <dd>${finding === null ? 'strike it to find its real pitch' : finding.words}</dd>
      </dl>
      ${
        finding === null
          ? nothing
          : html`<p><button @click=${this.onUse}>Use the measured pitch in the fit</button></p>`
      }
      <p class="caution">Strike the fork on rubber or the sole of a shoe, never on glass or a hard edge.</p>
      <bench-ask></bench-ask>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-sound-check': SoundCheckElement;
  }
}
