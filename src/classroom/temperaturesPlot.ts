import type { Plot, PlotPoint } from '../report/plots/plot.ts';
import { theoryBand } from '../report/plots/theoryBand.ts';
import { classTemperaturesWords } from '../words/classTemperatures.ts';
import { laterWords } from '../words/inUse.ts';
import { isShownByTemperature } from './classResult.ts';
import type { ClassResult } from './classResult.ts';

/** More names than these would cover the points. */
const MOST_NAMED = 12;

/**
 * The groups' speeds as measured over the temperatures of their air, with theory's band where it isn't kept back.
 * @returns null where the groups' temperatures differ too little to show anything
 */
export function temperaturesPlot({ rows, temperatures }: ClassResult, isTheoryHidden: boolean): Plot | null {
  if (temperatures === null) return null;
  const shown = rows.filter(isShownByTemperature).flatMap(({ state, group: { outcome, source } }) => {
    if (outcome === null || outcome.air === null) return [];
    const { speedMps, standardUncertaintyMps, air } = outcome;
    const isOutlying = state === 'outlying';
    return [
      { name: source.name, isOutlying, speedMps, standardUncertaintyMps, temperatureC: air.temperatureC },
    ];
  });
  const isNamed = shown.length <= MOST_NAMED;
  const theory = isTheoryHidden
    ? { lines: [], bands: [] }
    : theoryBand([temperatures.coldestC, temperatures.warmestC]);
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
