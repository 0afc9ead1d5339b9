import type { ClassDesk } from '../classroom/classDesk.ts';
import { LESSON_PREFIX, readLessonHash } from '../notebook/lessonLink.ts';
import { openLesson, revealLesson } from '../session/experiment/lessonArrival.ts';
import type { Session } from '../session/session.ts';
import { language } from '../words/language.ts';
import type { Language } from '../words/language.ts';
import { linkFaultWords } from '../words/lessonLink.ts';
import { offeredLanguage } from './languageChoice.ts';

/** Addresses that bring something along. */
export const REVEAL_PREFIX = '#reveal=';

/**
 * Takes in what an address brings: a lesson, the code that shows what one keeps back, or a group's result.
 * @param openDesk  the class
 * @param speak  says everything in another language
 */
export async function arrive(
  hash: string,
  session: Session,
  openDesk: () => Promise<ClassDesk>,
  speak: (language: Language) => Promise<void>,
): Promise<void> {
  const now = new Date().toISOString();
  if (hash.startsWith(REVEAL_PREFIX)) {
    await revealLesson(session, hash.slice(REVEAL_PREFIX.length), now);
    return;
  }
  if (!hash.startsWith(LESSON_PREFIX)) {
    const { takeCode } = await import('./class/takeCode.ts');
    const { kind, said } = await takeCode(hash, await openDesk());
    session.tell(kind, said);
    return;
  }
  const arrived = await readLessonHash(hash);
  if (arrived === null) return;
  if ('fault' in arrived) {
    session.tell('problem', linkFaultWords(arrived.fault));
    return;
  }
  // First, so that what is told of the lesson is told in its language.
  const wanted = offeredLanguage(arrived.plan.lesson.language ?? '');
  if (wanted !== null && wanted !== language) await speak(wanted);
  await openLesson(session, arrived, now);
}
