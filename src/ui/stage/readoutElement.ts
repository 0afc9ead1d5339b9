import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { readoutWords } from '../../words/page/stage.ts';
import { stageWords } from '../../words/page/stageLine.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { lengthAnswerWords } from '../../words/page/lengthCheck.ts';
import { warningMessages } from '../measure/warningMessages.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { Stopper } from '../../notebook/experiment.ts';
import type { WayBack } from '../../session/hearing/wayBack.ts';
import type { SourceKind } from './sourceKind.ts';
import './wayBackElement.ts';

const NO_WAY: WayBack = { kind: 'none' };

/**
 * The one number that is read from across the room, what is going on, and the way back to the maximum.
 * @fires doubts-show  to see what is doubtful
 */
@customElement('bench-readout')
export class ReadoutElement extends PartElement {
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
          'words words' auto / auto minmax(0, 1fr);
        gap: var(--gap-2) var(--gap-4);
        align-items: center;
      }
      .level {
        grid-area: number;
      }
      .number {
        font-size: var(--readout);
        line-height: 0.95;
        font-weight: 600;
        color: var(--tone);
        min-inline-size: 2.2ch;
        letter-spacing: -0.03em;
        white-space: nowrap;
      }
      .number.none {
        color: var(--edge);
        font-weight: 400;
      }
      .unit {
        color: var(--ink-soft);
        white-space: nowrap;
      }
      /* Two lines and the button have their place from the start: nothing below jumps when they come. */
      .words {
        grid-area: words;
        display: flex;
        gap: var(--gap-3);
        justify-content: space-between;
        align-items: start;
        min-block-size: calc(2.5 * var(--words));
        font-size: var(--words);
        line-height: 1.25;
      }
      @media (min-width: 1180px) {
        .words {
          min-block-size: var(--target);
        }
      }
      .words button {
        flex: none;
        font-size: var(--text-small);
        border-color: var(--caution);
        border-inline-start-width: 4px;
        background: var(--caution-wash);
      }
      bench-way-back {
        grid-area: back;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property() kind: SourceKind = 'practice';
  @state() private shownDb: number | null = null;
  private lastShown = 0;
  protected readonly watch = new SessionWatch(this, ['live', 'capture', 'notebook'], () => this.onChange());

  private onChange(): void {
    // Digits that change five times a second can still be read.
    const now = performance.now();
    if (this.session.hearing.isListening && now - this.lastShown < 200) return;
    this.lastShown = now;
    this.shownDb = this.session.hearing.isListening ? this.session.hearing.trace.heldRiseDb : null;
    this.requestUpdate();
  }

  override render() {
    const { shownDb } = this;
    const { trace, isListening, check } = this.session.hearing;
    // In a check the fork comes and goes on purpose: there is nowhere to go back to.
    const isGuided = isListening && check === null;
    const doubts =
      warningMessages(this.session).length + (this.session.hearing.trust.kind === 'trusted' ? 0 : 1);
    return html`
      <div class="grid">
        <div class="level">
          <p class="number ${shownDb === null ? 'none' : ''}" role="img" aria-label=${this.label()}>
            ${shownDb === null ? readoutWords.none : readoutWords.level(shownDb)}
          </p>
          <p class="unit" aria-hidden="true">${readoutWords.unit}</p>
        </div>
        <bench-way-back .way=${isGuided ? trace.wayBack : NO_WAY} stopper=${this.stopper()}></bench-way-back>
        <div class="words">
          <p role="status">${this.words()}</p>
          ${
            doubts === 0
              ? nothing
              : html`<button @click=${this.onDoubts}>${readoutWords.doubts(doubts)}</button>`
          }
        </div>
      </div>
    `;
  }

  /** What the hand moves: the practice column has a piston, and a sleeve moves like one. */
  private stopper(): Stopper {
    const { present, tube } = this.session.experiment;
    return this.kind === 'practice' || present.ends === 'open' ? 'piston' : tube.stopper;
  }

  private onDoubts(): void {
    send(this, 'doubts-show');
  }

  /** A check of one length has the first word while it goes on: its answer is awaited from afar, too. */
  private words(): string {
    const { check, capture } = this.session.hearing;
    if (check === null || capture.kind !== 'running')
      return stageWords(this.session, this.kind === 'recording');
    const { sign, verdict, detail } = lengthAnswerWords(check.answer);
    return check.answer === null ? detail : readoutWords.check(sign, verdict);
  }

  private label(): string {
    return this.shownDb === null ? readoutWords.noneSpoken : readoutWords.levelSpoken(this.shownDb);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-readout': ReadoutElement;
  }
}
