import { LitElement, css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PRINT_PALETTE } from '../../report/plots/plot.ts';
import type { Plot } from '../../report/plots/plot.ts';
import { plotSvg } from '../../report/plots/plotSvg.ts';
import { saveFile } from '../saveFile.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { plotPalette } from './plotPalette.ts';
import { svgToPng } from './svgToPng.ts';

/** In a narrower place letters would shrink with the picture. */
const SMALL_BELOW_PX = 480;

/** A picture of numbers with its words, to look at and to save. Files are drawn in print colours. */
@customElement('bench-picture')
export class BenchPicture extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      img {
        display: block;
        inline-size: 100%;
        block-size: auto;
        border: 1px solid var(--line);
      }
    `,
  ];

  @property({ attribute: false }) plot!: Plot;
  /** Of the saved file, without ending. */
  @property() name = 'picture';
  @state() private isSmall = false;
  private readonly sizes = new ResizeObserver(([entry]) => {
    if (entry !== undefined) this.isSmall = entry.contentRect.width < SMALL_BELOW_PX;
  });
  private readonly themes = new MutationObserver(() => this.requestUpdate());

  override connectedCallback(): void {
    super.connectedCallback();
    this.sizes.observe(this);
    this.themes.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes.disconnect();
    this.themes.disconnect();
  }

  private onSvg(): void {
    saveFile(`${this.name}.svg`, 'image/svg+xml', plotSvg(this.plot, PRINT_PALETTE));
  }

  private async onPng(): Promise<void> {
    saveFile(`${this.name}.png`, 'image/png', await svgToPng(plotSvg(this.plot, PRINT_PALETTE)));
  }

  override render() {
    const source = `data:image/svg+xml,${encodeURIComponent(plotSvg(this.plot, plotPalette(this), this.isSmall))}`;
    return html`<figure class="stack">
      <img
        src=${source}
        width="640"
        height=${this.isSmall ? 480 : 400}
        alt="${this.plot.title}. ${this.plot.words}"
      />
      <figcaption class="small">${this.plot.words}</figcaption>
      <div class="row">
        <button @click=${this.onSvg} aria-label="Save “${this.plot.title}” as SVG">Save as SVG</button>
        <button @click=${this.onPng} aria-label="Save “${this.plot.title}” as PNG">Save as PNG</button>
      </div>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-picture': BenchPicture;
  }
}
