import type { Lesson } from '../../notebook/experiment.ts';
import { laterWords } from '../inUse.ts';
import { listed } from '../lists.ts';

/** What a lesson keeps back, in one sentence. */
export function keptBackList({ hideExpected, hideTheory, hideTruth }: Lesson): string {
  const { until, expected, theory, truth } = laterWords.keptBack;
  return until(
    listed([
      ...(hideExpected ? [expected] : []),
      ...(hideTheory ? [theory] : []),
      ...(hideTruth ? [truth] : []),
    ]),
  );
}
