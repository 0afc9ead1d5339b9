import { css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words } from '../../words/inUse.ts';
import { loupeTicks } from './loupeTicks.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** The rule close up at the piston's face, so that tenths of a millimetre can be judged. It prints no reading. */
@customElement('bench-loupe')
export class LoupeElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      svg {
        display: block;
        inline-size: 100%;
        block-size: 3.5rem;
        border: 2px solid var(--edge);
        border-radius: 1.75rem;
        background: var(--rule);
      }
      line {
        stroke: var(--rule-ink);
        stroke-width: 1.5;
      }
      text {
        font: 0.9rem var(--sans);
        fill: var(--rule-ink);
      }
      .hair {
        stroke: var(--tone);
        stroke-width: 2;
      }
    `,
  ];

  /** Rule reading at the piston, m. */
  @property({ type: Number }) readingM = 0;

  override render() {
    return html`<svg viewBox="0 0 240 56" role="img" aria-label=${words.practice.rule}>
      ${loupeTicks(this.readingM).map(
        (tick) => svg`
          <line x1=${tick.atPx} x2=${tick.atPx} y1="0" y2=${tick.heightPx} />
          ${tick.label === null ? null : svg`<text x=${tick.atPx} y="46" text-anchor="middle">${tick.label}</text>`}`,
      )}
      <line class="hair" x1="120" x2="120" y1="0" y2="56" />
    </svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-loupe': LoupeElement;
  }
}
