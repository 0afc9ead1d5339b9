import { css, html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import encodeQR from 'qr';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from './partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** Bare modules around a code, as ISO/IEC 18004 asks for. */
const QUIET = 4;

/** Links as QR codes, drawn as large as there is room, one after the other where there are several. */
@customElement('bench-code')
export class CodeElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      /* Dark on white whatever the theme: not every camera reads it the other way round. */
      svg {
        display: block;
        inline-size: 100%;
        max-inline-size: min(38rem, 82vh);
        block-size: auto;
        background: #ffffff;
      }
      @media (forced-colors: active) {
        svg {
          forced-color-adjust: none;
        }
      }
    `,
  ];

  /** What is to be read: whole addresses. */
  @property({ attribute: false }) links: readonly string[] = [];
  /** What the codes are, for those who don't see them. */
  @property() name = '';
  @state() private at = 0;

  override willUpdate(): void {
    this.at = Math.min(this.at, Math.max(this.links.length - 1, 0));
  }

  private onTurn(by: number): void {
    this.at = (this.at + by + this.links.length) % this.links.length;
  }

  override render() {
    const link = this.links[this.at];
    if (link === undefined) return nothing;
    const rows = encodeQR(link, 'raw', { ecc: 'medium', border: QUIET });
    // Runs of dark modules, row by row.
    const dark = rows.flatMap((row, y) =>
      row.flatMap((isDark, x) =>
        isDark && row[x - 1] !== true ? [`M${x} ${y}h${runFrom(row, x)}v1h-${runFrom(row, x)}z`] : [],
      ),
    );
    const several = this.links.length > 1;
    return html`<div class="stack">
      <svg
        role="img"
        aria-label=${several ? laterWords.code.pictureOfSeveral(this.name, this.at + 1, this.links.length) : laterWords.code.picture(this.name)}
        viewBox="0 0 ${rows.length} ${rows.length}"
        shape-rendering="crispEdges"
      >
        ${svg`<path fill="#ffffff" d="M0 0H${rows.length}V${rows.length}H0z"/><path fill="#000000" d="${dark.join('')}"/>`}
      </svg>
      ${
        several
          ? html`<div class="row">
              <button @click=${() => this.onTurn(-1)}>${laterWords.code.before}</button>
              <strong role="status">${laterWords.code.place(this.at + 1, this.links.length)}</strong>
              <button @click=${() => this.onTurn(1)}>${laterWords.code.next}</button>
            </div>`
          : nothing
      }
    </div>`;
  }
}

/** How many modules are dark in a row, from here on. */
function runFrom(row: readonly boolean[], from: number): number {
  const end = row.indexOf(false, from);
  return (end < 0 ? row.length : end) - from;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-code': CodeElement;
  }
}
