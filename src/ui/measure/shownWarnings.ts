import { hidesTheory, warningsWithoutTheory } from '../../report/hideTheory.ts';
import type { ListeningWarning } from '../../session/hearing/listeningTypes.ts';
import type { Session } from '../../session/session.ts';
import type { SolverWarning } from '../../solver/solverWarning.ts';

/** What is doubtful about the sound and the marks now; without theory where a lesson hides it. */
export interface ShownWarnings {
  readonly heard: readonly ListeningWarning[];
  readonly solved: readonly SolverWarning[];
}

export function shownWarnings({ outcomeIfAny: outcome, experiment, hearing }: Session): ShownWarnings {
  const heard = hearing.trace.warnings;
  const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
  if (solution === undefined) return { heard, solved: [] };
  return { heard, solved: hidesTheory(experiment) ? warningsWithoutTheory(solution) : solution.warnings };
}
