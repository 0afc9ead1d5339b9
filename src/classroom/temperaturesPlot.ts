import type { Plot, PlotPoint } from '../report/plots/plot.ts';
import { theoryBand } from '../report/plots/theoryBand.ts';
import { classTemperaturesWords } from '../words/classTemperatures.ts';
import { laterWords } from '../words/inUse.ts';
import type { ClassResult } from './classResult.ts';

/** Groups whose air differs by less show nothing of temperature, °C. */
export const LEAST_SPREAD_C = 2;
/** More names than these would cover the points. */
const MOST_NAMED = 12;

/**
 * The groups' speeds as measured over the temperatures of their air, with theory's band where it isn't kept back.
 * Without those that are left out: what is wrong with them would hide what temperature does.
 * @returns null where the groups' temperatures differ too little to show anything
 */
export function temperaturesPlot({ rows }: ClassResult, isTheoryHidden: boolean): Plot | null {
  const shown = rows.flatMap(({ state, group }) => {
    const { outcome, source } = group;
    if ((state !== 'counted' && state !== 'outlying') || outcome === null || outcome.air === null) return [];
    const { speedMps, standardUncertaintyMps } = outcome;
    const { temperatureC } = outcome.air;
    return [
      { name: source.name, isOutlying: state === 'outlying', speedMps, standardUncertaintyMps, temperatureC },
    ];
  });
  const degreesC = shown.map(({ temperatureC }) => temperatureC);
  if (!(Math.max(...degreesC) - Math.min(...degreesC) >= LEAST_SPREAD_C)) return null;
  const isNamed = shown.length <= MOST_NAMED;
  const theory = isTheoryHidden ? { lines: [], bands: [] } : theoryBand(degreesC);
  return {
    title: laterWords.classTemperatures.title,
    xLabel: laterWords.classTemperatures.x,
    yLabel: laterWords.classTemperatures.y,
    words: classTemperaturesWords({
      groups: shown.length,
      hasOutlying: shown.some(({ isOutlying }) => isOutlying),
      isNamed,
      isTheoryShown: !isTheoryHidden,
    }),
    points: shown.map((one): PlotPoint => ({
      x: one.temperatureC,
      y: one.speedMps,
      yBar: 2 * one.standardUncertaintyMps,
      shape: one.isOutlying ? 'cross' : 'disc',
      colour: one.isOutlying ? 'ink' : 'tone',
      label: isNamed || one.isOutlying ? one.name : null,
    })),
    ...theory,
    include: { x: [], y: [] },
  };
}
