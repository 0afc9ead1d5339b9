import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { ClassResult } from '../../classroom/classResult.ts';
import { spreadSvg, spreadWords } from '../../classroom/spreadSvg.ts';
import { PRINT_PALETTE } from '../../report/plots/plot.ts';
import { plotPalette } from '../parts/plotPalette.ts';
import { svgToPng } from '../parts/svgToPng.ts';
import { saveFile } from '../saveFile.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** The picture of a class's spread, to look at and to save. */
@customElement('bench-spread')
export class BenchSpread extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      img {
        display: block;
        inline-size: 100%;
        /* Narrower its letters could not be read: it slides sideways instead. */
        min-inline-size: 32rem;
        block-size: auto;
      }
    `,
  ];

  @property({ attribute: false }) result!: ClassResult;
  private readonly themes = new MutationObserver(() => this.requestUpdate());

  override connectedCallback(): void {
    super.connectedCallback();
    this.themes.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.themes.disconnect();
  }

  private onSvg(): void {
    saveFile('class-spread.svg', 'image/svg+xml', spreadSvg(this.result, PRINT_PALETTE));
  }

  private async onPng(): Promise<void> {
    saveFile('class-spread.png', 'image/png', await svgToPng(spreadSvg(this.result, PRINT_PALETTE)));
  }

  override render() {
    const source = `data:image/svg+xml,${encodeURIComponent(spreadSvg(this.result, plotPalette(this)))}`;
    const words = spreadWords(this.result);
    return html`<figure class="stack">
      <div class="scroll" tabindex="0" role="region" aria-label="Picture of the spread">
        <img src=${source} alt=${`Spread of the class. ${words}`} />
      </div>
      <figcaption class="small">${words}</figcaption>
      <div class="row">
        <button @click=${this.onSvg} aria-label="Save the spread as SVG">Save as SVG</button>
        <button @click=${this.onPng} aria-label="Save the spread as PNG">Save as PNG</button>
      </div>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-spread': BenchSpread;
  }
}
