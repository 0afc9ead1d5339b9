import type { LabReportInput } from '../../report/labReport/labReportInput.ts';
import { comparedGroups, comparePairs } from '../../session/benchCompare.ts';
import type { BenchSession } from '../../session/benchSession.ts';

/** What the open experiment's report is made of. */
export function reportInput({ experiment, outcome }: BenchSession): LabReportInput {
  const pairs = comparePairs(comparedGroups(experiment, 'place'));
  const comparisons = pairs.flatMap((pair) => (pair.differenceMps === null ? [] : [pair]));
  return { experiment, places: outcome.places, comparisons };
}
