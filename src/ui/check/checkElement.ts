import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import './checkLengthElement.ts';
import './gainCheckElement.ts';
import './soundCheckElement.ts';
import './sweepElement.ts';
import './toneElement.ts';

const CARDS = [
  { tag: 'bench-sound-check', name: laterWords.check.sound },
  { tag: 'bench-gain-check', name: laterWords.check.gain },
  { tag: 'bench-check-length', name: laterWords.check.length },
  { tag: 'bench-tone', name: laterWords.check.tone },
  { tag: 'bench-sweep', name: laterWords.check.sweep },
] as const;

/** What is checked with the ear of the bench, beside the slide itself. */
@customElement('bench-check')
export class CheckElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      /* On a phone the cards lie far below one another. */
      nav {
        display: none;
        flex-wrap: wrap;
        gap: var(--gap-2);
        margin-block-end: var(--gap-3);
      }
      @media (max-width: 760px) {
        nav {
          display: flex;
        }
      }
      nav button {
        font-size: var(--text-small);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;

  private onCard(tag: string): void {
    const card = this.renderRoot.querySelector<HTMLElement>(tag);
    card?.scrollIntoView({ block: 'start' });
    card?.focus({ preventScroll: true });
  }

  override render() {
    return html`<nav aria-label=${laterWords.check.ways}>
        ${CARDS.map(({ tag, name }) => html`<button @click=${() => this.onCard(tag)}>${name}</button>`)}
      </nav>
      <div class="cards">
        <bench-sound-check tabindex="-1" .session=${this.session}></bench-sound-check>
        <bench-gain-check tabindex="-1" class="sheet" .session=${this.session}></bench-gain-check>
        <bench-check-length tabindex="-1" class="sheet" .session=${this.session}></bench-check-length>
        <bench-tone tabindex="-1" class="sheet" .session=${this.session}></bench-tone>
        <bench-sweep tabindex="-1" class="sheet" .session=${this.session}></bench-sweep>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-check': CheckElement;
  }
}
