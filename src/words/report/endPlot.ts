import { LOW_FREQUENCY_END_RATIO } from '../../air/endCorrection.ts';
import type { EndRatio } from '../../solver/endRatio.ts';
import { laterWords } from '../inUse.ts';
import { fixed, roundPair } from '../numbers.ts';
import { listOfSome } from './listOfSome.ts';

/** A tube with the end correction that was found in it, m. */
export interface SpokenTube {
  readonly radiusM: number;
  readonly endCorrectionM: number;
}

/** What the plot shows. @param line  the line as e/d, null where there is none yet */
export function endPlotWords(tubes: readonly SpokenTube[], line: EndRatio | null): string {
  const said = laterWords.endPlot;
  const theory = said.theory(fixed(LOW_FREQUENCY_END_RATIO.unflanged / 2, 3));
  if (line !== null) {
    const pair = roundPair(line.ratio / 2, line.expandedUncertainty / 2);
    return `${said.line(pair.value, pair.uncertainty)} ${theory}`;
  }
  const list = listOfSome(
    tubes.map(({ radiusM, endCorrectionM }) =>
      said.tube(fixed(2000 * radiusM, 1), fixed(1000 * endCorrectionM, 1)),
    ),
  );
  return list === '' ? `${said.noTube} ${theory}` : `${said.tubes(list)} ${said.anotherTube} ${theory}`;
}
