import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { words } from '../../words/inUse.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { Drawn } from './drawn.ts';

const WAVES = ['pressure', 'displacement', 'none'] as const;

/**
 * Chooses what is drawn in the column: the standing wave of pressure or of displacement, the expected lengths.
 * @fires drawn-change  detail: the choice
 */
@customElement('bench-drawn')
export class DrawnElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .row {
        gap: var(--gap-2) var(--gap-4);
        font-size: var(--text-small);
      }
      label {
        display: flex;
        align-items: center;
        gap: var(--gap-2);
        min-block-size: var(--target);
      }
    `,
  ];

  @property({ attribute: false }) drawn!: Drawn;
  /** The teacher keeps the expected lengths back. */
  @property({ type: Boolean }) withheld = false;

  private say(change: Partial<Drawn>): void {
    send(this, 'drawn-change', { ...this.drawn, ...change });
  }

  private onWave(chosen: string): void {
    const wave = WAVES.find((one) => one === chosen);
    if (wave !== undefined) this.say({ wave });
  }

  private onExpected(event: Event): void {
    this.say({ expected: (event.target as HTMLInputElement).checked });
  }

  override render() {
    return html`<div class="row">
      <label
        >${words.drawn.wave}
        ${choice({
          label: words.drawn.waveNamed,
          options: WAVES.map((wave) => ({ value: wave, name: words.drawn.waves[wave] })),
          now: () => this.drawn.wave,
          choose: (wave) => this.onWave(wave),
        })}</label
      >
      ${
        this.withheld
          ? nothing
          : html`<label
              ><input
                type="checkbox"
                .checked=${live(this.drawn.expected)}
                @change=${this.onExpected}
              />${words.drawn.expected}</label
            >`
      }
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-drawn': DrawnElement;
  }
}
