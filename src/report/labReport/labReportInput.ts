import type { Experiment } from '../../notebook/experiment.ts';
import type { Comparison } from '../../solver/compare.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';

/** What a report is made of. */
export interface LabReportInput {
  readonly experiment: Experiment;
  /** One answer a place that has marks with lengths. */
  readonly places: readonly PlaceSolution[];
  /** Differences between places, by the places' ids; empty where there is one place. */
  readonly comparisons: readonly Comparison[];
  /** Pairs of places that are too many to be printed; absent: none. */
  readonly pairsLeftOut?: number;
  /** Leaves the working, and what it leads to, to the student: there is room to calculate instead. Absent: no. */
  readonly leavesWorking?: boolean;
}
