import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { sharedStyles } from '../sharedStyles.ts';
import { PartElement } from './partElement.ts';
import { choice } from './choice.ts';

/** The part of a long list that is shown. @param from  where it should begin; kept on the list */
export function pageOf<T>(items: readonly T[], from: number, size: number): readonly T[] {
  const begin = pageStart(items.length, from, size);
  return items.slice(begin, begin + size);
}

/** Where a page begins: a multiple of its size within the list. */
export function pageStart(total: number, from: number, size: number): number {
  const last = Math.max(Math.ceil(total / size) - 1, 0);
  return Math.min(Math.max(Math.floor(from / size), 0), last) * size;
}

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
  /** What the list holds, in the plural. */
  @property() what = 'entries';

  private go(from: number): void {
    this.dispatchEvent(new CustomEvent('page-change', { detail: pageStart(this.total, from, this.size) }));
  }

  override render() {
    const { total, size, what } = this;
    if (total <= size) return nothing;
    const from = pageStart(total, this.from, size);
    const starts = Array.from({ length: Math.ceil(total / size) }, (_, page) => page * size);
    return html`<nav class="row" aria-label="Pages of ${what}">
      <button aria-label="Previous ${what}" ?disabled=${from === 0} @click=${() => this.go(from - size)}>
        Previous
      </button>
      <label
        >Shown
        ${choice({
          label: `Which ${what} are shown`,
          options: starts.map((start) => ({
            value: String(start),
            name: `${start + 1} to ${Math.min(start + size, total)}`,
          })),
          now: () => String(pageStart(this.total, this.from, this.size)),
          choose: (start) => this.go(Number(start)),
        })}
        of ${total} ${what}</label
      >
      <button
        aria-label="Next ${what}"
        ?disabled=${from + size >= total}
        @click=${() => this.go(from + size)}
      >
        Next
      </button>
    </nav>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-pages': PagesElement;
  }
}
