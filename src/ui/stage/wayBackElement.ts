import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Stopper } from '../../notebook/experiment.ts';
import { FRESH_S } from '../../session/hearing/wayBack.ts';
import type { WayBack } from '../../session/hearing/wayBack.ts';
import { heardAgoWords, wayBackWords } from '../../words/page/stage.ts';
import { words } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { spokenWayBack } from './spokenWayBack.ts';
import { ticksOf, wayBackX } from './wayBackScale.ts';

const WIDEST_DB = 18;
const SPOKEN_EVERY_MS = 2000;

/** The way back to the resonance: its centre in the middle of a piece of rule, and on it the column's end as it is now. */
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
      .rule,
      .tick {
        stroke: var(--edge);
        stroke-width: 2;
      }
      .centre {
        fill: none;
        stroke: var(--ink);
        stroke-width: 3;
      }
      .here .centre {
        fill: var(--tone-wash);
        stroke: var(--tone);
        stroke-width: 6;
      }
      .end {
        fill: var(--tone-fill);
        stroke: var(--tone);
        stroke-width: 2;
      }
      .old .end {
        fill: none;
        stroke-dasharray: 4 3;
      }
      .reach {
        stroke: var(--tone);
        stroke-width: 4;
        opacity: 0.5;
      }
      text {
        font: 14px var(--sans);
        fill: var(--ink-soft);
      }
      .idle .centre,
      .idle text {
        stroke: var(--line);
      }
      .idle text {
        stroke: none;
      }
      p {
        text-align: center;
        font-size: var(--words);
        line-height: 1.25;
        min-block-size: 1.25em;
      }
      @media (max-width: 480px) {
        p.long {
          font-size: var(--text);
          line-height: 1.15;
        }
      }
      p.idle {
        font-size: var(--text);
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) way: WayBack = { kind: 'none' };
  @property() stopper: Stopper = 'piston';
  private spoken = '';
  private spokenAt = -Infinity;

  /** What is spoken changes every two seconds at most: a voice takes as long to say it. */
  override willUpdate(): void {
    const words = spokenWayBack(this.way, this.spoken, this.stopper);
    const now = performance.now();
    if (words === this.spoken || now - this.spokenAt < SPOKEN_EVERY_MS) return;
    this.spoken = words;
    this.spokenAt = now;
  }

  override render() {
    const { way } = this;
    return html`
      ${way.kind === 'level' || (way.kind === 'here' && way.by === 'level') ? this.byLevel(way) : this.byCentre(way)}
      ${this.line(way)}
      <p class="unseen" role="status">${this.spoken}</p>
    `;
  }

  /** The rule around the resonance: shorter columns on the left, as in the picture of the column. */
  private byCentre(way: WayBack) {
    const place = way.kind === 'off' ? way.place : null;
    const x = place === null ? null : wayBackX(place.halfWidths);
    const isOld = way.kind === 'off' && way.ageS > FRESH_S;
    const state = way.kind === 'here' ? 'here' : way.kind === 'off' ? (isOld ? 'old' : '') : 'idle';
    return html`<svg viewBox="0 0 300 60" class=${state} aria-hidden="true">
      <path class="rule" d="M10 40 H290" />
      ${ticksOf(place).map((at) => svg`<path class="tick" d="M${at} 40 v-8" />`)}
      ${x === null ? nothing : svg`<path class="reach" d="M${x} 40 H150" />`}
      <circle class="centre" cx="150" cy="26" r="20" />
      <path class="centre" d="M150 40 v14" />
      ${way.kind === 'here' ? svg`<circle class="end" cx="150" cy="26" r="10" />` : nothing}
      ${x === null ? nothing : svg`<path class="end" d="M${x - 5} 8 h10 v36 h-10 Z" />`}
      <text x="10" y="57">${words.wayBack.tooShort}</text>
      <text x="290" y="57" text-anchor="end">${words.wayBack.tooLong}</text>
    </svg>`;
  }

  /** Where only the level is known there are no sides: the nearer to the ring, the louder. */
  private byLevel(way: WayBack) {
    const below = way.kind === 'level' ? way.belowBestDb : 0;
    const x = 262 - (Math.min(below, WIDEST_DB) / WIDEST_DB) * 236;
    return html`<svg viewBox="0 0 300 60" class=${way.kind === 'here' ? 'here' : ''} aria-hidden="true">
      <path class="rule" d="M20 30 H236" stroke-dasharray="2 6" />
      <circle class="centre" cx="262" cy="30" r="20" />
      <circle class="end" cx=${x} cy="30" r="10" />
    </svg>`;
  }

  private line(way: WayBack) {
    switch (way.kind) {
      case 'none':
        return html`<p class="idle">${words.wayBack.idle}</p>`;
      case 'here':
        return html`<p class="long">
          <strong>${way.by === 'centre' ? words.wayBack.here : words.wayBack.atMaximum}</strong>
          ${words.wayBack.holdStill}
        </p>`;
      case 'off': {
        return html`<p>
          <strong>${wayBackWords(way.place.halfWidths, this.stopper)}</strong>
          ${way.ageS > FRESH_S ? heardAgoWords(way.ageS) : nothing}
        </p>`;
      }
      case 'lost':
        return html`<p class="long">${words.wayBack.lost}</p>`;
      case 'level':
        return html`<p class="long">${words.wayBack.byLevel}</p>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-way-back': WayBackElement;
  }
}
