import type { EndRatio } from '../../solver/endRatio.ts';
import { fixed, roundPair } from '../numbers.ts';
import { listOfSome } from './listOfSome.ts';

/** A tube with the end correction that was found in it, m. */
export interface SpokenTube {
  readonly radiusM: number;
  readonly endCorrectionM: number;
}

export const endPlotWords = {
  title: 'End correction against diameter',
  x: 'inside diameter of the tube, mm',
  y: 'end correction, mm',
  shows: (tubes: readonly SpokenTube[], line: EndRatio | null) =>
    `${endWords(tubes, line)} The dashed line is theory for a thin rim, 0.307 · d.`,
} as const;

/** The line as e/d, or what is still missing for it. */
function endWords(tubes: readonly SpokenTube[], line: EndRatio | null): string {
  if (line !== null) {
    const pair = roundPair(line.ratio / 2, line.expandedUncertainty / 2);
    return `The tubes’ line rises by (${pair.value} ± ${pair.uncertainty}) · d (95 %).`;
  }
  const list = listOfSome(
    tubes.map(
      ({ radiusM, endCorrectionM }) =>
        `${fixed(2000 * radiusM, 1)} mm: ${fixed(1000 * endCorrectionM, 1)} mm`,
    ),
  );
  return list === ''
    ? 'No tube with a measured end correction yet.'
    : `${list}. A tube of another diameter gives the line: begin a new experiment under Records.`;
}
