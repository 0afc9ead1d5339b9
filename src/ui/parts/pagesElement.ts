import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { laterWords } from '../../words/inUse.ts';
import type { PagedList } from '../../words/page/pages.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { send } from './events.ts';
import { PartElement } from './partElement.ts';
import { choice } from './choice.ts';
import { pageStart } from './pageOf.ts';

export { pageOf, pageStart } from './pageOf.ts';

/**
 * Goes through a list that is too long to be shown at once, and says which part is shown. Nothing where all of it is.
 * @fires page-change  detail: where the wanted page begins
 */
@customElement('bench-pages')
export class PagesElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      nav {
        font-size: var(--text-small);
      }
    `,
  ];

  @property({ type: Number }) total = 0;
  @property({ type: Number }) from = 0;
  @property({ type: Number }) size = 50;
  @property() list!: PagedList;

  private go(from: number): void {
    send(this, 'page-change', pageStart(this.total, from, this.size));
  }

  override render() {
    const { total, size } = this;
    const words = laterWords.list[this.list];
    if (total <= size) return nothing;
    const from = pageStart(total, this.from, size);
    const starts = Array.from({ length: Math.ceil(total / size) }, (_, page) => page * size);
    return html`<nav class="row" aria-label=${words.pages}>
      <button aria-label=${words.previous} ?disabled=${from === 0} @click=${() => this.go(from - size)}>
        ${laterWords.pages.previous}
      </button>
      <label
        >${laterWords.pages.shown}
        ${choice({
          label: words.which,
          options: starts.map((start) => ({
            value: String(start),
            name: laterWords.pages.part(start + 1, Math.min(start + size, total)),
          })),
          now: () => String(pageStart(this.total, this.from, this.size)),
          choose: (start) => this.go(Number(start)),
        })}
        ${words.ofAll(total)}</label
      >
      <button aria-label=${words.next} ?disabled=${from + size >= total} @click=${() => this.go(from + size)}>
        ${laterWords.pages.next}
      </button>
    </nav>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-pages': PagesElement;
  }
}
