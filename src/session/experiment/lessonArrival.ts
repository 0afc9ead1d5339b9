import type { Lesson } from '../../notebook/experiment.ts';
import { keepsBack } from '../../notebook/keptBack.ts';
import type { ArrivedLesson } from '../../notebook/lessonLink.ts';
import { lessonExperiment } from '../../notebook/lessonLink.ts';
import { recordStep } from '../../notebook/history.ts';
import { revealDigest, revealed } from '../../notebook/revealCode.ts';
import type { Session } from '../session.ts';

/**
 * Sets up a lesson as an experiment of its own; the one before stays in the list. A lesson that was begun here before
 * is opened as it was left: nobody's marks are out of sight because a link was pressed twice.
 * @param now  ISO 8601
 */
export async function openLesson(
  session: Session,
  { plan, unheardHz }: ArrivedLesson,
  now: string,
): Promise<void> {
  const { id } = plan.lesson;
  if (id !== undefined && session.experiment.lesson?.id === id) {
    session.tell('info', { code: 'lesson-again' });
    return;
  }
  const [last] = id === undefined ? [] : await storedWith(session, (lesson) => lesson.id === id);
  if (last !== undefined) {
    await session.experiments.openStored(last);
    if (session.experiment.id === last) session.tell('info', { code: 'lesson-again' });
    return;
  }
  const lesson = lessonExperiment(plan, session.newId(), now);
  if (!(await session.experiments.open(lesson, 'open lesson'))) return;
  if (unheardHz.length === 0) session.tell('info', { code: 'lesson-open' });
  else session.tell('problem', { code: 'lesson-without', unheardHz });
}

/**
 * Shows what a lesson keeps back, in each experiment of the notebook that this code opens.
 * @param now  ISO 8601
 */
export async function revealLesson(session: Session, code: string, now: string): Promise<void> {
  const { experiment } = session;
  let count = 0;
  if (revealed(experiment, code) !== experiment) {
    if (!session.change('reveal lesson', (present) => revealed(present, code))) return;
    count += 1;
  }
  for (const id of await storedWith(
    session,
    (lesson) => lesson.reveal === revealDigest(code) && keepsBack(lesson),
  )) {
    if (id === experiment.id) continue;
    const isDone = await session.keeping.closed.change(id, (history) =>
      recordStep(history, { ...revealed(history.present, code), changedAt: now }, 'reveal lesson'),
    );
    if (isDone) count += 1;
  }
  session.topics.announce('keeping');
  if (count > 0) session.tell('info', { code: 'lesson-revealed', experiments: count });
  else session.tell('problem', { code: 'no-such-code' });
}

/** Ids of the notebook's experiments of a lesson, the last changed first. */
async function storedWith(
  session: Session,
  isWanted: (lesson: Lesson) => boolean,
): Promise<readonly string[]> {
  const listed = await session.keeping.list();
  const found = ('value' in listed ? listed.value : []).flatMap(({ id, experiment, deletedAt }) => {
    // As it lies in the store: whoever opens it has it checked.
    const { lesson, changedAt } = (experiment ?? {}) as { lesson?: Lesson | null; changedAt?: string };
    const isOne = deletedAt === null && lesson !== undefined && lesson !== null && isWanted(lesson);
    return isOne ? [{ id, changedAt: changedAt ?? '' }] : [];
  });
  return found.sort((one, other) => (one.changedAt > other.changedAt ? -1 : 1)).map(({ id }) => id);
}
