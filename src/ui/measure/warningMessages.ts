import type { Session } from '../../session/session.ts';
import { listeningWarningWords } from '../../words/listening.ts';
import { markNames } from '../../words/markNames.ts';
import { solverWarningWords } from '../../words/solverWarnings.ts';
import { shownWarnings } from './shownWarnings.ts';

/** What is doubtful about the sound and the marks now, each with what to do; without theory where a lesson hides it. */
export function warningMessages(session: Session): readonly string[] {
  const { heard, solved } = shownWarnings(session);
  return [...heard.map(listeningWarningWords), ...solverWarningWords(solved, markNames(session.experiment))];
}
