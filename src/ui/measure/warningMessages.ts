import { hidesTheory, warningsWithoutTheory } from '../../report/hideTheory.ts';
import type { BenchSession } from '../../session/benchSession.ts';

/** What is doubtful about the sound and the marks now, each with what to do; without theory where a lesson hides it. */
export function warningMessages(session: BenchSession): readonly string[] {
  const { outcomeIfAny: outcome, experiment } = session;
  const { trace } = session.hearing;
  const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
  const heard = trace.warnings.map((warning) => warning.message);
  if (solution === undefined) return heard;
  return hidesTheory(experiment)
    ? [...heard, ...warningsWithoutTheory(solution)]
    : [...heard, ...solution.warnings.map((warning) => warning.message)];
}
