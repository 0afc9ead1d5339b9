import { airFromReadings } from '../air/airState.ts';
import { solve } from '../solver/solve.ts';
import type { ClassGroup, GroupSource } from './classGroup.ts';

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
    },
    problems: [],
    isChosen: null,
  };
}
