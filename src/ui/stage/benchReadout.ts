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
      :host {
        container-type: inline-size;
      }
      .grid {
        display: grid;
        grid-template:
          'number back' auto
          'words words' auto / auto minmax(8rem, 20rem);
        justify-content: space-between;
        gap: var(--gap-1) var(--gap-4);
        align-items: center;
      }
      @container (min-width: 38rem) {
        .grid {
          grid-template: 'number words back' auto / auto minmax(10rem, 1fr) 17rem;
        }
      }
      .number {
        font-size: var(--readout);
        line-height: 0.95;
        font-weight: 600;
        color: var(--tone);
        min-inline-size: 2.6ch;
        letter-spacing: -0.03em;
        white-space: nowrap;
        grid-area: number;
      }
      .number.none {
        color: var(--ink-soft);
        font-weight: 300;
      }
      .words {
        grid-area: words;
        font-size: var(--text-large);
        line-height: 1.25;
        min-block-size: 3.75em;
      }
      .unit {
        color: var(--ink-soft);
      }
      bench-way-back {
        grid-area: back;
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
          ${isSilent ? '—' : fixed(this.shownDb ?? 0, 0)}
        </p>
        <bench-way-back .guidance=${this.session.isListening ? trace.guidance : null}></bench-way-back>
        <div class="words">
          <p class="unit">dB above the room</p>
          <p>${stageWords(capture, trace)}</p>
        </div>
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
