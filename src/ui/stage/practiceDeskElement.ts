import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PracticeRun } from '../../session/hearing/practiceRun.ts';
import type { Session } from '../../session/session.ts';
import {
  areReadingsNoted,
  needsOwnPlace,
  noteReadings,
  PRACTICE_PLACE,
} from '../../session/hearing/practiceReadings.ts';
import { words } from '../../words/inUse.ts';
import { instrumentWords, otherTubeWords } from '../../words/page/practice.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { send } from '../parts/events.ts';
import { HoldRepeat } from '../parts/holdRepeat.ts';
import { FINE_STEP_M, STEP_M } from './slideSteps.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './loupeElement.ts';

const ROOMS = ['quiet', 'talk', 'full class'] as const;

/**
 * The hands of the practice column: strike, bring the fork to the mouth, and what the instruments read.
 * What is put into it stands in its last row.
 * @fires listen-start  when the fork is struck while nobody listens
 * @fires slide-by  detail: metres to slide on, negative to slide back
 */
@customElement('bench-practice-desk')
export class PracticeDeskElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .desk {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-2) var(--gap-4);
        align-items: center;
      }
      @media (max-width: 480px) {
        .desk > .row {
          gap: var(--gap-1);
        }
        .desk > .row button {
          padding: 0 var(--gap-2);
        }
      }
      .room {
        display: flex;
        align-items: center;
        gap: var(--gap-2);
        font-size: var(--text-small);
      }
      .instruments {
        display: flex;
        max-inline-size: 23.5rem;
        gap: var(--gap-2);
        align-items: center;
        font-size: var(--text-small);
      }
      .instruments button {
        flex: none;
      }
      bench-loupe {
        flex: 0 1 clamp(12.5rem, 15.5vw, 15rem);
        min-inline-size: 0;
      }
      .fine {
        display: flex;
        max-inline-size: 100%;
        gap: var(--gap-2);
        align-items: center;
      }
      .fine button {
        flex: none;
        inline-size: var(--target);
        padding: 0;
        font-size: var(--text-large);
        touch-action: none;
        -webkit-user-select: none;
        user-select: none;
        -webkit-touch-callout: none;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) practice!: PracticeRun;
  private readonly hold = new HoldRepeat();
  @state() private noise: string = 'quiet';
  @state() private lengthM = 0;
  @state() private isAtMouth = true;
  @state() private isNoted = false;
  protected readonly watch = new SessionWatch(this, ['live', 'capture', 'notebook'], () => this.look());

  override connectedCallback(): void {
    super.connectedCallback();
    this.look();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.hold.end();
  }

  /** What the key S does as well. */
  strike(): void {
    if (!this.session.hearing.isListening) {
      send(this, 'listen-start');
    }
    this.practice.strike();
    this.look();
  }

  /** What the key F does as well. */
  toggleFork(): void {
    this.practice.column.setForkAtMouth(!this.practice.column.forkIsAtMouth);
    this.look();
  }

  damp(): void {
    this.practice.column.damp();
  }

  private look(): void {
    this.lengthM = this.practice.column.lengthM;
    this.isAtMouth = this.practice.column.forkIsAtMouth;
    this.isNoted = areReadingsNoted(this.session.experiment, this.practice.readings);
  }

  private onRoom(noise: string): void {
    const room = ROOMS.find((one) => one === noise);
    if (room === undefined) return;
    this.noise = room;
    this.practice.setNoise(room);
  }

  private onReadings(): void {
    const { readings } = this.practice;
    const isApart = needsOwnPlace(this.session.experiment, readings);
    const id = this.session.newId();
    this.session.tell('info', isApart ? words.practice.notedApart(PRACTICE_PLACE) : words.practice.noted);
    this.session.change('note readings', (experiment) => noteReadings(experiment, readings, id));
  }

  private onStep(byM: number): void {
    send(this, 'slide-by', byM);
  }

  /** A finger can't set a millimetre on a rule that a phone draws three to the pixel. */
  private stepButton(byM: number, name: string, sign: string) {
    const end = (): void => this.hold.end();
    return html`<button
      aria-label=${name}
      @pointerdown=${() => this.hold.begin(() => this.onStep(byM))}
      @pointerup=${end}
      @pointerleave=${end}
      @pointercancel=${end}
      @contextmenu=${(event: Event) => event.preventDefault()}
      @click=${(event: MouseEvent) => {
        // Pressed by a key or by a screen reader: no pointer came before it.
        if (event.detail === 0) this.onStep(byM);
      }}
    >
      ${sign}
    </button>`;
  }

  override render() {
    const { experiment } = this.session;
    return html`
      <section class="desk" aria-label=${words.practice.heading}>
        <div class="row">
          <button class="primary" @click=${this.strike}>${words.practice.strike}</button>
          <button aria-pressed=${this.isAtMouth ? 'true' : 'false'} @click=${this.toggleFork}>
            ${words.practice.forkAtMouth}
          </button>
          <button @click=${this.damp}>${words.practice.damp}</button>
        </div>
        <div class="fine">
          ${this.stepButton(-STEP_M, words.practice.shorter, '«')}
          ${this.stepButton(-FINE_STEP_M, words.practice.shorterFine, '‹')}
          <bench-loupe .readingM=${this.lengthM + experiment.rule.zeroOffsetM}></bench-loupe>
          ${this.stepButton(FINE_STEP_M, words.practice.longerFine, '›')}
          ${this.stepButton(STEP_M, words.practice.longer, '»')}
        </div>
        ${
          this.isNoted
            ? nothing
            : html`<div class="instruments">
                <span>${instrumentWords(this.practice.readings, this.ownPlace())}</span>
                <button @click=${this.onReadings}>${words.practice.note}</button>
              </div>`
        }
        <label class="room"
          >${words.practice.room}
          ${choice({
            options: ROOMS.map((room) => ({ value: room, name: words.practice.rooms[room] })),
            now: () => this.noise,
            choose: (noise) => this.onRoom(noise),
          })}</label
        >
        <slot></slot>
        ${this.otherTube()}
      </section>
    `;
  }

  /** Where the readings go when the present place is another room; null where they go to the present one. */
  private ownPlace(): string | null {
    return needsOwnPlace(this.session.experiment, this.practice.readings) ? PRACTICE_PLACE : null;
  }

  /** What is measured on a tube of another width doesn't fit the experiment's. */
  private otherTube() {
    const { diameterM } = this.session.experiment.tube;
    const practiceM = this.practice.readings.diameterM;
    if (diameterM === null || diameterM === practiceM) return nothing;
    return html`<p class="caution">${otherTubeWords(diameterM, practiceM)}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-practice-desk': PracticeDeskElement;
  }
}
