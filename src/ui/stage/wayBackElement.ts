import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { wayBackWords } from '../../words/page/stage.ts';
import type { Guidance } from '../../session/hearing/listeningTypes.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { NEAR_DB, spokenWayBack } from './spokenWayBack.ts';

const WIDEST_DB = 18;
const SPOKEN_EVERY_MS = 1000;

/** The way back to the maximum as a picture: a puck that comes to rest in the ring when the column is there. */
@customElement('bench-way-back')
export class WayBackElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      svg {
        display: block;
        inline-size: 100%;
        block-size: clamp(3.5rem, 2.5rem + 3vw, 5.75rem);
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
        text-align: center;
        font-size: var(--words);
        line-height: 1.25;
        min-block-size: 1.25em;
      }
      @media (max-width: 480px) {
        p.near {
          font-size: var(--text-small);
        }
      }
      p.idle {
        font-size: var(--text);
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) guidance: Guidance | null = null;
  private spoken = '';
  private spokenAt = -Infinity;

  /** What is spoken changes once a second at most. */
  override willUpdate(): void {
    const below = this.guidance === null ? null : Math.max(-this.guidance.belowBestDb, 0);
    const words = spokenWayBack(below, this.spoken);
    const now = performance.now();
    if (words === this.spoken || now - this.spokenAt < SPOKEN_EVERY_MS) return;
    this.spoken = words;
    this.spokenAt = now;
  }

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
      <p class=${below === null ? 'idle' : isNear ? 'near' : ''}>
        ${
          below === null
            ? wayBackWords.idle
            : isNear
              ? html`<strong>${wayBackWords.here}</strong> ${wayBackWords.holdStill}`
              : wayBackWords.below(below)
        }
      </p>
      <p class="unseen" role="status">${this.spoken}</p>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-way-back': WayBackElement;
  }
}
