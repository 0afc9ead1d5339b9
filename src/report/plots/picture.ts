import type { Plot, PlotPalette } from './plot.ts';
import { plotSvg } from './plotSvg.ts';

/** Something drawn, with its words, before its colours and its place are known. */
export interface Picture {
  readonly title: string;
  /** What it shows, for those who don't see it. */
  readonly words: string;
  /** A self-contained SVG file. @param isSmall  for a narrow place, where the picture has a form for it */
  readonly svg: (palette: PlotPalette, isSmall: boolean) => string;
}

/** A plot as a picture. */
export function plotPicture(plot: Plot): Picture {
  return {
    title: plot.title,
    words: plot.words,
    svg: (palette, isSmall) => plotSvg(plot, palette, isSmall),
  };
}
