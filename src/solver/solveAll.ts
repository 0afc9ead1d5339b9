import { solve } from './solve.ts';
import type { NoSolution, Solution, SolverMark, SolverOptions } from './solution.ts';

/**
 * One answer for each place, in the order in which the places first appear.
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,place\n512,closed,16.0,hall\n512,closed,15.2,yard');
 * solveAll(marksOfRows(rows)).map(({ place }) => place) // → ['hall', 'yard']
 */
export function solveAll(
  marks: readonly SolverMark[],
  options: SolverOptions = {},
): readonly (Solution | NoSolution)[] {
  const places = new Map<string, SolverMark[]>();
  for (const mark of marks) {
    const group = places.get(mark.place);
    if (group === undefined) places.set(mark.place, [mark]);
    else group.push(mark);
  }
  return [...places.values()].map((group) => solve(group, options));
}
