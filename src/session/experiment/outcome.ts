import type { NoSolution, Solution } from '../../solver/solution.ts';

/** What the solver says of an experiment, one answer a place that has marks with lengths. */
export interface Outcome {
  readonly places: readonly {
    readonly placeId: string;
    readonly solution: Solution | NoSolution;
  }[];
}
