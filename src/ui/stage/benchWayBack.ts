import { LitElement, css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fixed } from '../../report/rounding.ts';
import type { Guidance } from '../../session/listeningTypes.ts';
import { sharedStyles } from '../sharedStyles.ts';

const WIDEST_DB = 18;
const NEAR_DB = 1.5;

/** The way back to the maximum as a picture: a puck that comes to rest in the ring when the column is there. */
@customElement('bench-way-back')
export class BenchWayBack extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      svg {
        display: block;
        inline-size: 100%;
        block-size: 4.5rem;
      }
      .track {
        stroke: var(--edge);
        stroke-width: 2;
        stroke-dasharray: 2 6;
      }
      .ring {
        fill: none;
        stroke: var(--ink);
        stroke-width: 3;
      }
      .ring.near {
        fill: var(--tone-wash);
        stroke: var(--tone);
        stroke-width: 6;
      }
      .puck {
        fill: var(--tone-fill);
        stroke: var(--tone);
        stroke-width: 2;
      }
      .idle .ring {
        stroke: var(--line);
      }
      p {
        text-align: end;
        font-size: var(--text-small);
        min-block-size: 1.4em;
      }
    `,
  ];

  @property({ attribute: false }) guidance: Guidance | null = null;

  override render() {
    const below = this.guidance === null ? null : Math.max(-this.guidance.belowBestDb, 0);
    const isNear = below !== null && below <= NEAR_DB;
    const x = below === null ? null : 262 - (Math.min(below, WIDEST_DB) / WIDEST_DB) * 236;
    return html`
      <svg viewBox="0 0 300 60" class=${below === null ? 'idle' : ''} aria-hidden="true">
        <path class="track" d="M20 30 H236" />
        <circle class="ring ${isNear ? 'near' : ''}" cx="262" cy="30" r="24" />
        <circle class="ring" cx="262" cy="30" r="12" />
        ${x === null ? nothing : svg`<circle class="puck" cx=${x} cy="30" r="10" />`}
      </svg>
      <p>
        ${
          below === null
            ? 'Way back to the maximum'
            : isNear
              ? html`<strong>Here.</strong> Hold still and read the rule.`
              : html`${fixed(below, 0)} dB below the maximum`
        }
      </p>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-way-back': BenchWayBack;
  }
}
