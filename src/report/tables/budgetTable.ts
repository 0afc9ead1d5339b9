import type { Experiment } from '../../notebook/experiment.ts';
import { budgetQuantity } from '../../words/budgetLines.ts';
import type { Cell } from '../csv.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { solvedPlaces } from './placeSolution.ts';
import type { PlaceSolution } from './placeSolution.ts';

const HEADING = [
  'place',
  'quantity',
  'standard_uncertainty',
  'unit',
  'evaluation',
  'distribution',
  'sensitivity_mps_per_unit',
  'contribution_mps',
  'share_of_variance_pct',
  'degrees_of_freedom',
] as const;

/** Each place's uncertainty budget in full precision, the heading first. */
export function budgetTable(
  experiment: Experiment,
  places: readonly PlaceSolution[],
): readonly (readonly Cell[])[] {
  const labels = placeLabels(experiment);
  const rows = solvedPlaces(places).flatMap(({ placeId, solution }) => {
    const variance = solution.standardUncertaintyMps ** 2;
    return solution.budget.map((line): readonly Cell[] => [
      labels.get(placeId) ?? '',
      budgetQuantity(line),
      line.standardUncertainty,
      // A bare 1 in the column of units would be read as a number.
      line.unit === '1' ? null : line.unit,
      line.evaluation,
      line.distribution,
      line.sensitivity,
      line.contributionMps,
      variance > 0 ? (100 * line.contributionMps ** 2) / variance : 0,
      Number.isFinite(line.degreesOfFreedom) ? line.degreesOfFreedom : null,
    ]);
  });
  return [HEADING, ...rows];
}
