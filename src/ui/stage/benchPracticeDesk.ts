import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { fixed } from '../../report/rounding.ts';
import type { BenchPractice } from '../../session/benchPractice.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { HoldRepeat } from '../parts/holdRepeat.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './benchLoupe.ts';

const STEP_M = 0.001;

const ROOMS = [
  { noise: 'quiet', name: 'quiet' },
  { noise: 'talk', name: 'some talk' },
  { noise: 'full class', name: 'full class' },
] as const;

/**
 * The hands of the practice column: strike, bring the fork to the mouth, and what the instruments read.
 * @fires listen-start  when the fork is struck while nobody listens
 * @fires slide-by  detail: metres to slide on, negative to slide back
 */
@customElement('bench-practice-desk')
export class BenchPracticeDesk extends BenchElement {
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
        user-select: none;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  @property({ attribute: false }) practice!: BenchPractice;
  private readonly hold = new HoldRepeat();
  @state() private noise: string = 'quiet';
  @state() private lengthM = 0;
  @state() private isAtMouth = true;
  @state() private isNoted = false;
  protected readonly watch = new BenchWatch(this, ['live', 'capture', 'notebook'], () => this.look());

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
      this.dispatchEvent(new CustomEvent('listen-start', { bubbles: true, composed: true }));
    }
    this.practice.column.strike();
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
    this.isNoted = this.areReadingsNoted();
  }

  private onRoom(noise: string): void {
    const room = ROOMS.find((one) => one.noise === noise);
    if (room === undefined) return;
    this.noise = room.noise;
    this.practice.setNoise(room.noise);
  }

  private onReadings(): void {
    const { diameterM, temperatureC, humidityPct, pressurePa } = this.practice.readings;
    this.session.tell('info', 'The readings are noted under Apparatus.');
    this.session.change('note readings', (experiment) => ({
      ...experiment,
      tube: { ...experiment.tube, diameterM },
      places: experiment.places.map((place) =>
        place.id === experiment.present.placeId ? { ...place, temperatureC, humidityPct, pressurePa } : place,
      ),
    }));
  }

  private onStep(byM: number): void {
    this.dispatchEvent(new CustomEvent('slide-by', { detail: byM, bubbles: true, composed: true }));
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

  /** Whether the experiment already has what the instruments read. */
  private areReadingsNoted(): boolean {
    const { tube, places, present } = this.session.experiment;
    const place = places.find((one) => one.id === present.placeId);
    const { diameterM, temperatureC } = this.practice.readings;
    return tube.diameterM === diameterM && place?.temperatureC === temperatureC;
  }

  override render() {
    const { experiment } = this.session;
    const { diameterM, temperatureC, humidityPct } = this.practice.readings;
    return html`
      <section class="desk" aria-label="Practice column">
        <div class="row">
          <button class="primary" @click=${this.strike}>Strike the fork</button>
          <button aria-pressed=${this.isAtMouth ? 'true' : 'false'} @click=${this.toggleFork}>
            Fork at the mouth
          </button>
          <button @click=${this.damp}>Damp it</button>
        </div>
        <div class="fine">
          ${this.stepButton(-STEP_M, 'One millimetre shorter', '‹')}
          <bench-loupe .readingM=${this.lengthM + experiment.rule.zeroOffsetM}></bench-loupe>
          ${this.stepButton(STEP_M, 'One millimetre longer', '›')}
        </div>
        <label class="room"
          >Room
          ${choice({
            options: ROOMS.map(({ noise, name }) => ({ value: noise, name })),
            now: () => this.noise,
            choose: (noise) => this.onRoom(noise),
          })}</label
        >
        ${
          this.isNoted
            ? nothing
            : html`<div class="instruments">
                <span
                  >Instruments: ${fixed(temperatureC, 1)} °C, ${fixed(humidityPct ?? 50, 0)} % humidity, tube
                  ${fixed(diameterM * 1000, 1)} mm wide inside</span
                >
                <button @click=${this.onReadings}>Note these readings</button>
              </div>`
        }
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-practice-desk': BenchPracticeDesk;
  }
}
