import { LitElement, css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { fixed } from '../../report/rounding.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { stageWords } from './stageWords.ts';
import './benchWayBack.ts';

/** The one number that is read from across the room, what is going on, and the way back to the maximum. */
@customElement('bench-readout')
export class BenchReadout extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      .grid {
        display: grid;
        grid-template-columns: auto minmax(10rem, 20rem);
        gap: var(--gap-1) var(--gap-5);
        align-items: center;
      }
      .number {
        font-size: var(--readout);
        line-height: 0.95;
        font-weight: 600;
        color: var(--tone);
        min-inline-size: 2.6ch;
        letter-spacing: -0.03em;
        white-space: nowrap;
      }
      .number.none {
        color: var(--ink-soft);
        font-weight: 300;
      }
      .unit {
        display: block;
        font-size: var(--text-large);
        line-height: 1.3;
        letter-spacing: 0;
        font-weight: 400;
        color: var(--ink);
      }
      .words {
        font-size: var(--text-large);
        grid-column: 1 / -1;
        min-block-size: 1.4em;
      }
      @media (max-width: 560px) {
        .grid {
          grid-template-columns: auto 1fr;
          gap: var(--gap-1) var(--gap-3);
        }
        .unit {
          font-size: var(--text);
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  @state() private shownDb: number | null = null;
  private lastShown = 0;
  protected readonly watch = new BenchWatch(this, ['live', 'capture'], () => this.onChange());

  private onChange(): void {
    // Digits that change five times a second can still be read.
    const now = performance.now();
    if (this.session.isListening && now - this.lastShown < 200) return;
    this.lastShown = now;
    this.shownDb = this.session.isListening ? (this.session.trace.latest?.riseDb ?? null) : null;
    this.requestUpdate();
  }

  override render() {
    const { trace, capture } = this.session;
    const isSilent = this.shownDb === null;
    return html`
      <div class="grid">
        <p class="number ${isSilent ? 'none' : ''}" role="img" aria-label=${this.label()}>
          ${isSilent ? '—' : fixed(this.shownDb ?? 0, 0)}<span class="unit"> dB above the room</span>
        </p>
        <bench-way-back .guidance=${this.session.isListening ? trace.guidance : null}></bench-way-back>
        <p class="words">${stageWords(capture, trace)}</p>
      </div>
    `;
  }

  private label(): string {
    return this.shownDb === null
      ? 'Rise above the room: no tone heard'
      : `Rise above the room: ${fixed(this.shownDb, 0)} decibels`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-readout': BenchReadout;
  }
}
