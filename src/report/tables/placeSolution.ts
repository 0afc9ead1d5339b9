import type { NoSolution, Solution } from '../../solver/solution.ts';

/** What the solver says of one place of an experiment. */
export interface PlaceSolution {
  readonly placeId: string;
  readonly solution: Solution | NoSolution;
}

/** The places that have a speed. */
export function solvedPlaces(
  places: readonly PlaceSolution[],
): readonly { readonly placeId: string; readonly solution: Solution }[] {
  return places.flatMap(({ placeId, solution }) =>
    solution.speedMps === null ? [] : [{ placeId, solution }],
  );
}
