import { markup, trusted } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { PRINT_PALETTE } from '../plots/plot.ts';
import type { Plot } from '../plots/plot.ts';
import { plotSvg } from '../plots/plotSvg.ts';

/** A plot with its words. On a phone it slides sideways, for the keyboard too. */
export function figurePart(plot: Plot): Markup {
  return markup`<figure class="sliding" tabindex="0" aria-label="${plot.title}">${trusted(plotSvg(plot, PRINT_PALETTE))}<figcaption>${plot.words}</figcaption></figure>`;
}
