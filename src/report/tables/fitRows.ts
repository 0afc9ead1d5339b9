import { markLengthM } from '../../marks/mark.ts';
import { markIndex } from '../../notebook/markList.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { outlierCauseWords } from '../../words/outlierCauses.ts';
import type { Cell } from '../csv.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';
import { measuredMarks } from '../../notebook/measuredMarks.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { solvedPlaces } from './placeSolution.ts';
import type { PlaceSolution } from './placeSolution.ts';

const HEADING = [
  'place',
  'mark',
  'fork_hz',
  'ends',
  'length_cm',
  'order',
  'order_confidence',
  'fitted_length_cm',
  'residual_mm',
  'outlier',
  'likely_cause',
] as const;

/** Each fitted mark beside what the fit makes of it, the heading first. Lengths have the zero offset taken off. */
export function fitRows(
  experiment: Experiment,
  places: readonly PlaceSolution[],
): readonly (readonly Cell[])[] {
  const marks = new Map(measuredMarks(experiment).map((mark) => [mark.id, mark]));
  const forks = new Map(experiment.forks.map((fork) => [fork.id, fork]));
  const labels = placeLabels(experiment);
  const index = markIndex(experiment);
  const rows = solvedPlaces(places).flatMap(({ placeId, solution }) =>
    solution.marks.flatMap((solved): (readonly Cell[])[] => {
      const mark = marks.get(solved.key);
      const fork = forks.get(mark?.forkId ?? '');
      if (mark === undefined || fork === undefined) return [];
      // Of a bracket the middle counts.
      const lengthM = (markLengthM(mark) ?? mark.lengthM) - experiment.rule.zeroOffsetM;
      return [
        [
          labels.get(placeId) ?? '',
          index.numberOf(mark.id),
          forkInUse(fork).hz,
          mark.ends,
          lengthM * 100,
          solved.order,
          solved.orderConfidence,
          (lengthM - solved.residualM) * 100,
          solved.residualM * 1000,
          solved.outlier ? 'yes' : 'no',
          solved.cause === null ? null : outlierCauseWords(solved.cause),
        ],
      ];
    }),
  );
  return [HEADING, ...rows];
}
