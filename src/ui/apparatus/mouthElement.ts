import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { MOUTH_SHAPES } from '../../air/mouth.ts';
import type { MouthShape } from '../../air/mouth.ts';
import type { Session } from '../../session/session.ts';
import { mouthChoiceWords } from '../../words/page/apparatus.ts';
import { laterWords } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { mouthArt } from './mouthArt.ts';

/** What the tube's open end looks like: it decides the end correction. */
@customElement('bench-mouth')
export class MouthElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .choices {
        display: grid;
        gap: var(--gap-2);
        margin-block-start: var(--gap-2);
      }
      label {
        display: grid;
        grid-template-columns: auto 6rem minmax(0, 1fr);
        gap: var(--gap-2);
        align-items: center;
        border: 1px solid var(--line);
        border-radius: var(--radius);
        padding: var(--gap-2);
        min-block-size: var(--target);
        cursor: pointer;
      }
      label:has(:checked) {
        background: var(--tone-wash);
        border-color: var(--tone);
      }
      svg {
        inline-size: 100%;
        block-size: auto;
      }
      .wall {
        fill: none;
        stroke: var(--ink);
        stroke-width: 2;
      }
      .unsaid {
        stroke-dasharray: 3 3;
      }
      .solid {
        fill: var(--ink);
      }
      .reach {
        fill: none;
        stroke: var(--tone);
        stroke-width: 2.5;
        stroke-dasharray: 5 3;
      }
      .ask {
        fill: var(--ink-soft);
        font: 600 1.25rem var(--sans);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  private onChoose(mouth: MouthShape | null): void {
    this.session.change('change tube', (experiment) => ({
      ...experiment,
      tube: { ...experiment.tube, mouth },
    }));
    // A choice may be refused: the radio then goes back.
    this.requestUpdate();
  }

  override render() {
    const { mouth } = this.session.experiment.tube;
    return html`<fieldset>
      <legend>${laterWords.mouthChoice.legend}</legend>
      <p class="small">${laterWords.mouthChoice.lead}</p>
      <div class="choices">
        ${[null, ...MOUTH_SHAPES].map((shape) => this.choice(shape, shape === mouth))}
      </div>
    </fieldset>`;
  }

  private choice(shape: MouthShape | null, isChosen: boolean) {
    const { name, sentence } = mouthChoiceWords(shape);
    return html`<label>
      <input
        type="radio"
        name="mouth"
        value=${shape ?? ''}
        .checked=${live(isChosen)}
        @change=${() => this.onChoose(shape)}
      />
      <svg viewBox="0 0 96 64" aria-hidden="true">${mouthArt(shape)}</svg>
      <span><b>${name}</b> <span class="small">${sentence}</span></span>
    </label>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-mouth': MouthElement;
  }
}
