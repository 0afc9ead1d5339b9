import { readLessonHash } from '../notebook/lessonLink.ts';
import { openLesson, revealLesson } from '../session/experiment/lessonArrival.ts';
import type { Session } from '../session/session.ts';
import { linkFaultWords } from '../words/lessonLink.ts';

/** Addresses that bring something along. */
export const REVEAL_PREFIX = '#reveal=';

/** Takes in what an address brings: a lesson, or the code that shows what one keeps back. */
export async function arrive(hash: string, session: Session): Promise<void> {
  const now = new Date().toISOString();
  if (hash.startsWith(REVEAL_PREFIX)) {
    await revealLesson(session, hash.slice(REVEAL_PREFIX.length), now);
    return;
  }
  const arrived = await readLessonHash(hash);
  if (arrived === null) return;
  if ('fault' in arrived) session.tell('problem', linkFaultWords(arrived.fault));
  else await openLesson(session, arrived, now);
}
