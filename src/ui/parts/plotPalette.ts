import type { PlotPalette } from '../../report/plots/plot.ts';

/** The page's present colours for a picture. @param element  in the page */
export function plotPalette(element: Element): PlotPalette {
  const style = getComputedStyle(element);
  const token = (name: string): string => style.getPropertyValue(name).trim();
  return {
    paper: token('--sheet'),
    ink: token('--ink'),
    soft: token('--ink-soft'),
    line: token('--line'),
    tone: token('--tone'),
    room: token('--room'),
  };
}
