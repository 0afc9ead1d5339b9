import type { Experiment } from '../../notebook/experiment.ts';
import type { Cell } from '../csv.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { solvedPlaces } from './placeSolution.ts';
import type { PlaceSolution } from './placeSolution.ts';

const HEADING = [
  'place',
  'speed_mps',
  'standard_uncertainty_mps',
  'expanded_uncertainty_mps',
  'coverage_factor',
  'degrees_of_freedom',
  'end_correction_mm',
  'end_correction_uncertainty_mm',
  'end_correction_source',
  'speed_end_correlation',
  'repeatability_mm',
  'repeatability_degrees_of_freedom',
] as const;
const THEORY_HEADING = [
  'theory_mps',
  'theory_uncertainty_mps',
  'difference_mps',
  'difference_pct',
  'normalised_error',
] as const;

/** Each place's result in full precision, the heading first. Theory is left out where the lesson hides it. */
export function resultRows(
  experiment: Experiment,
  places: readonly PlaceSolution[],
): readonly (readonly Cell[])[] {
  const isHidden = experiment.lesson?.hideTheory === true;
  const labels = placeLabels(experiment);
  const rows = solvedPlaces(places).map(({ placeId, solution }): readonly Cell[] => {
    const { theory, agreement } = solution;
    const beside: readonly Cell[] = [
      theory?.speedMps ?? null,
      theory?.standardUncertaintyMps ?? null,
      agreement?.differenceMps ?? null,
      agreement?.differencePct ?? null,
      agreement?.normalisedError ?? null,
    ];
    return [
      labels.get(placeId) ?? '',
      solution.speedMps,
      solution.standardUncertaintyMps,
      solution.expandedUncertaintyMps,
      solution.coverageFactor,
      solution.effectiveDegreesOfFreedom,
      solution.endCorrectionM * 1000,
      solution.endCorrectionStandardUncertaintyM * 1000,
      solution.endCorrectionSource,
      solution.speedEndCorrelation,
      solution.repeatability === null ? null : solution.repeatability.standardDeviationM * 1000,
      solution.repeatability?.degreesOfFreedom ?? null,
      ...(isHidden ? [] : beside),
    ];
  });
  return [isHidden ? HEADING : [...HEADING, ...THEORY_HEADING], ...rows];
}
