import type { SweepResonances } from '../../resonance/sweep/sweepResonances.ts';
import type { SweepLevel } from '../../tone/sweepCurve.ts';
import { levelDb } from '../../tone/level.ts';
import { fixed } from '../rounding.ts';
import type { Plot, PlotLine, PlotPoint } from './plot.ts';

/** Level against pitch on both ways of a sweep, its resonances marked. */
export function sweepPlot(found: SweepResonances): Plot {
  const { up, down, resonances } = found;
  const heard = [...(up ?? []), ...(down ?? [])];
  const top = Math.max(...heard.map((one) => levelDb(one.meanSquare)), -200);
  const list = resonances.map((one) => `${fixed(one.frequencyHz, 1)} Hz`).join(', ');
  return {
    title: 'Level against the pitch of the tone',
    xLabel: 'pitch of the played tone, Hz',
    yLabel: 'level, dB (0 dB: a sine of amplitude 1)',
    words:
      resonances.length === 0
        ? 'No resonance was heard on both ways.'
        : `Resonances heard both on the way up (solid) and back (dashed): ${list}.`,
    points: resonances.map((one): PlotPoint => ({
      x: one.frequencyHz,
      y: top + 2,
      yBar: null,
      shape: 'diamond',
      colour: 'ink',
      label: fixed(one.frequencyHz, 1),
    })),
    lines: [lineOf(up, null), lineOf(down, '5 4')].filter((line) => line.points.length > 0),
    bands: [],
    include: { x: [], y: [top + 5] },
  };
}

function lineOf(curve: readonly SweepLevel[] | null, dash: string | null): PlotLine {
  const points = (curve ?? []).map((one) => ({ x: one.frequencyHz, y: levelDb(one.meanSquare) }));
  return { points, dash, colour: dash === null ? 'tone' : 'room' };
}
