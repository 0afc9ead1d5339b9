import { airFromReadings } from '../air/airState.ts';
import { solve } from '../solver/solve.ts';
import type { SolverWarningCode } from '../solver/solverWarning.ts';
import type { ClassGroup, GroupSource } from './classGroup.ts';

/** Warnings that a whole class should know of a group; the others are advice for the group itself. */
const MAY_BE_WRONG: readonly SolverWarningCode[] = [
  'bad-mark',
  'inconsistent',
  'nothing-fits',
  'column-type',
  'length-unit',
  'order-ambiguous',
  'order-doubtful',
  'other-explanation',
  'tube-too-wide',
  'end-correction-implausible',
  'speed-implausible',
  'differs-from-theory',
  'implausible',
];

/** Solves a group's marks together, as one result, or takes the result that it states. */
export function solveGroup(id: string, source: GroupSource): ClassGroup {
  const { stated, marks } = source;
  if (stated !== null) {
    const { temperatureC } = stated;
    return {
      id,
      source,
      outcome: {
        speedMps: stated.speedMps,
        standardUncertaintyMps: stated.standardUncertaintyMps,
        air: temperatureC === null ? null : airFromReadings({ temperatureC }),
        markCount: 0,
        outliers: [],
        warnings: [],
      },
      problems: [],
      isChosen: null,
    };
  }
  const solution = solve(marks);
  if (solution.speedMps === null) {
    return { id, source, outcome: null, problems: solution.warnings, isChosen: null };
  }
  return {
    id,
    source,
    outcome: {
      speedMps: solution.speedMps,
      standardUncertaintyMps: solution.standardUncertaintyMps,
      air: solution.air,
      markCount: marks.length,
      outliers: solution.marks.flatMap(({ key, cause }) => (cause === null ? [] : [{ key, cause }])),
      warnings: solution.warnings.filter(({ code }) => MAY_BE_WRONG.includes(code)),
    },
    problems: [],
    isChosen: null,
  };
}
