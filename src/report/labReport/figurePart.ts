import { markup, trusted } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { PRINT_PALETTE } from '../plots/plot.ts';
import type { Plot } from '../plots/plot.ts';
import { plotSvg } from '../plots/plotSvg.ts';

/** A plot with its words. A phone shows it in its narrow form, whose letters can be read there. */
export function figurePart(plot: Plot): Markup {
  return figure(plotSvg(plot, PRINT_PALETTE), plotSvg(plot, PRINT_PALETTE, true), plot.words);
}

/**
 * A picture in two forms, of which the style shows one, with its words.
 * @param wide  SVG for paper and wide screens
 * @param narrow  SVG for a phone
 */
export function figure(wide: string, narrow: string, words: string): Markup {
  return markup`<figure><div class="wide">${trusted(wide)}</div><div class="narrow">${trusted(narrow)}</div><figcaption>${words}</figcaption></figure>`;
}
