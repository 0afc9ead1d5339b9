import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { BenchElement } from '../parts/benchElement.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What is drawn in the column. */
export interface Drawn {
  readonly wave: 'pressure' | 'displacement' | 'none';
  readonly expected: boolean;
}

const WAVES = [
  { wave: 'pressure', name: 'pressure' },
  { wave: 'displacement', name: 'displacement' },
  { wave: 'none', name: 'nothing' },
] as const;

/**
 * Chooses what is drawn in the column: the standing wave of pressure or of displacement, the expected places.
 * @fires drawn-change  detail: the choice
 */
@customElement('bench-drawn')
export class BenchDrawn extends BenchElement {
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
  /** The teacher keeps the expected places back. */
  @property({ type: Boolean }) withheld = false;

  private say(change: Partial<Drawn>): void {
    this.dispatchEvent(new CustomEvent('drawn-change', { detail: { ...this.drawn, ...change } }));
  }

  private onWave(event: Event): void {
    const wave = WAVES.find((one) => one.wave === (event.target as HTMLSelectElement).value)?.wave;
    if (wave !== undefined) this.say({ wave });
  }

  private onExpected(event: Event): void {
    this.say({ expected: (event.target as HTMLInputElement).checked });
  }

  override render() {
    return html`<div class="row">
      <label
        >Wave
        <select aria-label="Wave drawn" @change=${this.onWave}>
          ${WAVES.map(
            ({ wave, name }) =>
              html`<option value=${wave} ?selected=${wave === this.drawn.wave}>${name}</option>`,
          )}
        </select></label
      >
      ${
        this.withheld
          ? nothing
          : html`<label
              ><input type="checkbox" .checked=${this.drawn.expected} @change=${this.onExpected} />Expected
              places</label
            >`
      }
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-drawn': BenchDrawn;
  }
}
