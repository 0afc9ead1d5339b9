import type { Experiment } from '../../notebook/experiment.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';

/** What a report is made of. */
export interface LabReportInput {
  readonly experiment: Experiment;
  /** One answer a place that has marks with lengths. */
  readonly places: readonly PlaceSolution[];
  /** Sentences on the differences between places; empty where there is one place. */
  readonly comparisons: readonly string[];
  /** Pairs of places that are too many to be printed; absent: none. */
  readonly pairsLeftOut?: number;
}
