import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PRINT_PALETTE } from '../../report/plots/plot.ts';
import type { Picture } from '../../report/plots/picture.ts';
import { laterWords } from '../../words/inUse.ts';
import { saveFile } from '../saveFile.ts';
import { PartElement } from './partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { ThemeWatch } from '../themeWatch.ts';
import { plotPalette } from './plotPalette.ts';
import { svgAddress } from './svgAddress.ts';
import { svgToPng } from './svgToPng.ts';
import { WidthWatch } from './widthWatch.ts';

/** In a narrower place letters would shrink with the picture. */
const SMALL_BELOW_PX = 480;

/** A picture with its words, to look at and to save. Files are drawn in print colours. */
@customElement('bench-picture')
export class PictureElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      img {
        display: block;
        inline-size: 100%;
        block-size: auto;
        border: 1px solid var(--line);
      }
      .paper {
        display: none;
      }
      /* Paper is light, and has nothing to press. */
      @media print {
        .screen,
        button {
          display: none;
        }
        .paper {
          display: block;
        }
        figure {
          break-inside: avoid;
        }
        figcaption.small {
          font-size: 8pt;
        }
      }
      /* Narrower its letters could not be read: it slides sideways instead. */
      @media screen {
        .scroll img {
          min-inline-size: 32rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) picture!: Picture;
  /** Of the saved file, without ending. */
  @property() name = 'picture';
  /** It has no form for a narrow place, and any height. */
  @property({ type: Boolean }) sliding = false;
  @state() private isSmall = false;
  protected readonly width = new WidthWatch(this, (widthPx) => (this.isSmall = widthPx < SMALL_BELOW_PX));
  protected readonly themes = new ThemeWatch(this);

  private get printed(): string {
    return this.picture.svg(PRINT_PALETTE, false);
  }

  private onSvg(): void {
    saveFile(`${this.name}.svg`, 'image/svg+xml', this.printed);
  }

  private async onPng(): Promise<void> {
    saveFile(`${this.name}.png`, 'image/png', await svgToPng(this.printed));
  }

  override render() {
    const { title, words } = this.picture;
    return html`<figure class="stack">
      ${
        this.sliding
          ? html`<div
              class="scroll"
              tabindex="0"
              role="region"
              aria-label=${laterWords.picture.region(title)}
            >
              ${this.image()}
            </div>`
          : this.image()
      }
      <figcaption class="small">${words}</figcaption>
      <div class="row">
        <button @click=${this.onSvg} aria-label=${laterWords.picture.saveSvgNamed(title)}>
          ${laterWords.picture.saveSvg}
        </button>
        <button @click=${this.onPng} aria-label=${laterWords.picture.savePngNamed(title)}>
          ${laterWords.picture.savePng}
        </button>
      </div>
    </figure>`;
  }

  private image() {
    const { title, words } = this.picture;
    const source = svgAddress(this.picture.svg(plotPalette(this), this.isSmall));
    const alt = laterWords.picture.alternative(title, words);
    const paper = html`<img class="paper" src=${svgAddress(this.printed)} alt=${alt} />`;
    return this.sliding
      ? html`<img class="screen" src=${source} alt=${alt} />${paper}`
      : html`<img
            class="screen"
            src=${source}
            width="640"
            height=${this.isSmall ? 480 : 400}
            alt=${alt}
          />${paper}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-picture': PictureElement;
  }
}
