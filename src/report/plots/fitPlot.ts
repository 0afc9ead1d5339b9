import { halfWaves } from '../../air/columnResonance.ts';
import { markLengthM } from '../../marks/mark.ts';
import type { Mark } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { Solution, SolvedMark } from '../../solver/solution.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';
import { fitLabel, fitPlotWords, residualPlotWords } from '../../words/report/fitPlot.ts';
import { laterWords } from '../../words/inUse.ts';
import type { Plot, PlotLine, PlotPoint } from './plot.ts';

interface FitPoint {
  readonly mark: Mark;
  readonly solved: SolvedMark;
  readonly frequencyHz: number;
  /** Half waves over twice the frequency, ms: the time that sound takes for the column. */
  readonly timeMs: number;
  /** Zero offset taken off. */
  readonly lengthM: number;
}

/**
 * Length against the time that sound takes along it: a straight line whose slope is the speed in the tube and
 * whose start lies one end correction (two for open columns) below zero.
 */
export function fitPlot(experiment: Experiment, solution: Solution): Plot {
  const points = fitPoints(experiment, solution);
  const labels = points.map((point) => fitLabel(point.solved.order, point.frequencyHz));
  const labelled = new Set<string>();
  const firstOf = (label: string): string | null =>
    labelled.size === labelled.add(label).size ? null : label;
  const lines = (['closed', 'open'] as const).flatMap((ends): PlotLine[] => {
    const group = points.filter((point) => point.mark.ends === ends && !point.solved.outlier);
    if (group.length === 0) return [];
    const startCm = -100 * solution.endCorrectionM * (ends === 'open' ? 2 : 1);
    const fitted = group
      .map((point) => ({ x: point.timeMs, y: 100 * (point.lengthM - point.solved.residualM) }))
      .sort((one, other) => one.x - other.x);
    return [
      { points: [{ x: 0, y: startCm }, ...fitted], dash: ends === 'open' ? '6 4' : null, colour: 'ink' },
    ];
  });
  return {
    title: laterWords.fitPlot.title,
    xLabel: laterWords.fitPlot.x,
    yLabel: laterWords.fitPlot.y,
    words: fitPlotWords(points.length, solution.endCorrectionM),
    points: points.map((point, index): PlotPoint => ({
      x: point.timeMs,
      y: 100 * point.lengthM,
      yBar: null,
      shape: shapeOf(point),
      colour: 'tone',
      label: firstOf(labels[index] ?? ''),
    })),
    lines,
    bands: [],
    include: { x: [0], y: [0] },
  };
}

/** Measured minus fitted length of each mark, with the reading's uncertainty. */
export function residualPlot(experiment: Experiment, solution: Solution): Plot {
  // An outlier would press all the others into one line.
  const points = fitPoints(experiment, solution).filter((point) => !point.solved.outlier);
  const readingMm = 1000 * readingM(experiment, solution);
  const residuals = points.map(({ lengthM, solved }) => ({ lengthM, residualM: solved.residualM }));
  return {
    title: laterWords.residualPlot.title,
    xLabel: laterWords.residualPlot.x,
    yLabel: laterWords.residualPlot.y,
    words: residualPlotWords(residuals, points.length < solution.marks.length),
    points: points.map((point): PlotPoint => ({
      x: 100 * point.lengthM,
      y: 1000 * point.solved.residualM,
      yBar: readingMm,
      shape: shapeOf(point),
      colour: 'tone',
      label: null,
    })),
    lines: [],
    bands: [],
    include: { x: [0], y: [0, readingMm, -readingMm] },
  };
}

/** One reading's standard uncertainty, m: as stated, else what the solver took and the scatter made of it. */
function readingM({ rule }: Experiment, { budget }: Solution): number {
  const taken = budget.find(({ source }) => source === 'reading')?.standardUncertainty ?? 0;
  return rule.readingStandardUncertaintyM ?? taken;
}

function fitPoints(experiment: Experiment, solution: Solution): readonly FitPoint[] {
  const marks = new Map(experiment.marks.map((mark) => [mark.id, mark]));
  const forks = new Map(experiment.forks.map((fork) => [fork.id, fork]));
  return solution.marks.flatMap((solved): FitPoint[] => {
    const mark = marks.get(solved.key);
    const fork = forks.get(mark?.forkId ?? '');
    const readingM = mark === undefined ? null : markLengthM(mark);
    if (mark === undefined || readingM === null || fork === undefined) return [];
    const { hz } = forkInUse(fork);
    return [
      {
        mark,
        solved,
        frequencyHz: hz,
        timeMs: (1000 * halfWaves(solved.order, mark.ends)) / (2 * hz),
        lengthM: readingM - experiment.rule.zeroOffsetM,
      },
    ];
  });
}

function shapeOf(point: FitPoint): PlotPoint['shape'] {
  if (point.solved.outlier) return 'cross';
  return point.mark.ends === 'closed' ? 'disc' : 'ring';
}
