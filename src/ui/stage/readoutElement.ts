import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { stageWords } from '../../words/page/stageLine.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { lengthAnswerWords } from '../../words/page/lengthCheck.ts';
import { distanceWords, riseWords } from '../../words/page/stage.ts';
import { words } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { Stopper } from '../../notebook/experiment.ts';
import { FRESH_S } from '../../session/hearing/wayBack.ts';
import type { WayBack } from '../../session/hearing/wayBack.ts';
import type { SourceKind } from './sourceKind.ts';
import './wayBackElement.ts';

const NO_WAY: WayBack = { kind: 'none' };

/**
 * The one number that is read from across the room, what is going on, and the way back to the resonance. The number is
 * the level until the way back is known in millimetres; then it is the way still to go.
 */
@customElement('bench-readout')
export class ReadoutElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .grid {
        display: grid;
        /* As wide as the widest number: the picture beside it stays where it is. */
        grid-template:
          'number back' auto
          'words words' auto / calc(2.4 * var(--readout)) minmax(0, 1fr);
        gap: var(--gap-2) var(--gap-4);
        align-items: center;
      }
      .big {
        grid-area: number;
      }
      .number {
        font-size: var(--readout);
        line-height: 0.95;
        font-weight: 600;
        color: var(--tone);
        letter-spacing: -0.03em;
        white-space: nowrap;
      }
      .number.way {
        color: var(--ink);
      }
      .number.none,
      .number.old {
        color: var(--edge);
      }
      .number.none {
        font-weight: 400;
      }
      .unit {
        color: var(--ink-soft);
        white-space: nowrap;
      }
      /* Two lines have their place from the start: nothing below jumps when they come. */
      .words {
        grid-area: words;
        min-block-size: calc(2.5 * var(--words));
        font-size: var(--words);
        line-height: 1.25;
      }
      @media (min-width: 761px) {
        .words {
          min-block-size: var(--target);
        }
      }
      bench-way-back {
        grid-area: back;
        max-inline-size: 44rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property() kind: SourceKind = 'practice';
  /** What is going on is said elsewhere. */
  @property({ type: Boolean }) wordless = false;
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
    const { trace, isListening, check } = this.session.hearing;
    // In a check the fork comes and goes on purpose: there is nowhere to go back to.
    const way = isListening && check === null ? trace.wayBack : NO_WAY;
    return html`
      <div class="grid">
        <div class="big">${this.wayToGo(way) ?? this.level()}</div>
        <bench-way-back .way=${way} stopper=${this.stopper()}></bench-way-back>
        ${
          this.wordless
            ? nothing
            : // A resonance is told by the line along the lower edge, once.
              html`<p class="words" role="status" aria-live=${trace.guidance === null ? 'polite' : 'off'}>
                ${this.words()}
              </p>`
        }
      </div>
    `;
  }

  /** What the hand moves: the practice column has a piston, and a sleeve moves like one. */
  private stopper(): Stopper {
    const { present, tube } = this.session.experiment;
    return this.kind === 'practice' || present.ends === 'open' ? 'piston' : tube.stopper;
  }

  private level() {
    const { shownDb } = this;
    return html`<p class="number ${shownDb === null ? 'none' : ''}" role="img" aria-label=${this.label()}>
        ${shownDb === null ? words.readout.none : riseWords(shownDb)}
      </p>
      <p class="unit" aria-hidden="true">${words.readout.unit}</p>`;
  }

  /** Null where the way back isn't known in millimetres. The side stands in the words beside it. */
  private wayToGo(way: WayBack) {
    if (way.kind === 'here')
      return html`<p class="number" aria-hidden="true">${words.wayBack.hereLarge}</p>
        <p class="unit">${words.wayBack.nothingToGo}</p>`;
    if (way.kind !== 'off' || way.place.distanceM === null) return null;
    return html`<p class="number way ${way.ageS > FRESH_S ? 'old' : ''}">
        ${distanceWords(way.place.distanceM)}
      </p>
      <p class="unit">${words.wayBack.toGo}</p>`;
  }

  /** A check of one length has the first word while it goes on: its answer is awaited from afar, too. */
  private words(): string {
    const { check, capture } = this.session.hearing;
    if (check === null || capture.kind !== 'running')
      return stageWords(this.session, this.kind === 'recording');
    const { sign, verdict, detail } = lengthAnswerWords(check.answer);
    return check.answer === null ? detail : words.readout.check(sign, verdict);
  }

  private label(): string {
    return this.shownDb === null
      ? words.readout.noneSpoken
      : words.readout.levelSpoken(riseWords(this.shownDb));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-readout': ReadoutElement;
  }
}
