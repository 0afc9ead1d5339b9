import { laterWords } from '../inUse.ts';
import { listed } from '../lists.ts';
import { fixed } from '../numbers.ts';

/** A resonance's frequency beside its point. */
export function sweptLabel(frequencyHz: number): string {
  return fixed(frequencyHz, 1);
}

/** What the plot of a sweep shows. */
export function sweepPlotWords(resonancesHz: readonly number[]): string {
  const said = laterWords.sweepPlot;
  if (resonancesHz.length === 0) return said.none;
  return said.resonances(listed(resonancesHz.map((hz) => said.frequency(sweptLabel(hz)))));
}
