import type { SweepResonances } from '../../resonance/sweep/sweepResonances.ts';
import type { SweepCurve } from '../../tone/sweepCurve.ts';
import { levelDb } from '../../tone/level.ts';
import { laterWords } from '../../words/inUse.ts';
import { sweepPlotWords, sweptLabel } from '../../words/report/sweepPlot.ts';
import type { Plot, PlotLine, PlotPoint } from './plot.ts';

/**
 * Level against frequency on both ways of a sweep, its resonances marked.
 * @param rangeHz  that the picture shows in any case
 */
export function sweepPlot(found: SweepResonances, rangeHz: readonly number[] = []): Plot {
  const { up, down, resonances } = found;
  const heard = [...(up?.levels ?? []), ...(down?.levels ?? [])];
  const top = Math.max(...heard.map((one) => levelDb(one.meanSquare)), -200);
  return {
    title: laterWords.sweepPlot.title,
    xLabel: laterWords.sweepPlot.x,
    yLabel: laterWords.sweepPlot.y,
    words: sweepPlotWords(resonances.map((one) => one.frequencyHz)),
    points: resonances.map((one): PlotPoint => ({
      x: one.frequencyHz,
      y: top + 2,
      yBar: null,
      shape: 'diamond',
      colour: 'ink',
      label: sweptLabel(one.frequencyHz),
    })),
    lines: [...linesOf(up, null), ...linesOf(down, '5 4')],
    bands: [],
    include: { x: rangeHz, y: [top + 5] },
  };
}

/** One way as lines: none is drawn across what was lost. */
function linesOf(curve: SweepCurve | null, dash: string | null): PlotLine[] {
  if (curve === null) return [];
  const colour = dash === null ? 'tone' : 'room';
  const parts: { x: number; y: number }[][] = [[]];
  let lastHz = -Infinity;
  for (const { frequencyHz, meanSquare } of curve.levels) {
    const isCut = curve.holes.some(({ fromHz, toHz }) => toHz > lastHz && fromHz < frequencyHz);
    if (isCut && (parts.at(-1)?.length ?? 0) > 0) parts.push([]);
    parts.at(-1)?.push({ x: frequencyHz, y: levelDb(meanSquare) });
    lastHz = frequencyHz;
  }
  return parts.filter((points) => points.length > 1).map((points) => ({ points, dash, colour }));
}
