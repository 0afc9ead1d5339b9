import { LOW_FREQUENCY_END_RATIO } from '../../air/endCorrection.ts';
import type { EndRatio } from '../../solver/endRatio.ts';
import { endPlotWords } from '../../words/report/endPlot.ts';
import { laterWords } from '../../words/inUse.ts';
import { MOST_LABELS } from './plot.ts';
import type { Plot, PlotLine, PlotPoint } from './plot.ts';

/** A tube as a point of the picture. */
export interface EndPoint {
  readonly name: string;
  readonly radiusM: number;
  readonly endCorrectionM: number;
  readonly endCorrectionStandardUncertaintyM: number;
}

/** 95 % for many degrees of freedom. */
const COVERAGE = 2;
/** The picture shows at least the usual school tubes. */
const WIDEST_MM = 50;

/** End correction against the tube's diameter, with theory for a thin rim and, from two diameters on, the line fitted. */
export function endPlot(tubes: readonly EndPoint[], line: EndRatio | null): Plot {
  const widestMm = Math.max(WIDEST_MM, ...tubes.map((tube) => 2000 * tube.radiusM + 5));
  const theory: PlotLine = {
    points: [0, widestMm].map((x) => ({ x, y: (LOW_FREQUENCY_END_RATIO.unflanged * x) / 2 })),
    dash: '6 4',
    colour: 'room',
  };
  const fitted: PlotLine[] =
    line === null
      ? []
      : [
          {
            points: [0, widestMm].map((x) => ({ x, y: 1000 * line.zeroM + (line.ratio * x) / 2 })),
            dash: null,
            colour: 'tone',
          },
        ];
  return {
    title: laterWords.endPlot.title,
    xLabel: laterWords.endPlot.x,
    yLabel: laterWords.endPlot.y,
    words: endPlotWords(tubes, line),
    points: tubes.map((tube): PlotPoint => ({
      x: 2000 * tube.radiusM,
      y: 1000 * tube.endCorrectionM,
      yBar: 1000 * COVERAGE * tube.endCorrectionStandardUncertaintyM,
      shape: 'disc',
      colour: 'tone',
      label: tubes.length <= MOST_LABELS ? tube.name : null,
    })),
    lines: [theory, ...fitted],
    bands: [],
    include: { x: [0], y: [0] },
  };
}
