import { hidesTheory, warningsWithoutTheory } from '../../report/hideTheory.ts';
import type { Session } from '../../session/session.ts';
import { listeningWarningWords } from '../../words/listening.ts';
import { markNames } from '../../words/markNames.ts';
import { solverWarningWords } from '../../words/solverWarnings.ts';

/** What is doubtful about the sound and the marks now, each with what to do; without theory where a lesson hides it. */
export function warningMessages(session: Session): readonly string[] {
  const { outcomeIfAny: outcome, experiment } = session;
  const { trace } = session.hearing;
  const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
  const heard = trace.warnings.map(listeningWarningWords);
  if (solution === undefined) return heard;
  const warnings = hidesTheory(experiment) ? warningsWithoutTheory(solution) : solution.warnings;
  return [...heard, ...solverWarningWords(warnings, markNames(experiment))];
}
