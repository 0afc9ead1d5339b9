import { LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { LONGEST_LINK } from '../limits/sizes.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import type { Experiment, Lesson } from './experiment.ts';
import { newExperiment, newFork } from './newExperiment.ts';
import { readLesson } from './readExperiment.ts';
import { RecordReader } from './recordReader.ts';

/** What a lesson link carries: apparatus and rules, nothing about a person. */
export interface LessonPlan {
  readonly forksHz: readonly number[];
  readonly ends: ColumnEnds;
  readonly diameterM: number | null;
  readonly travelM: number;
  readonly lesson: Lesson;
}

const PREFIX = '#lesson=';

/** The part of the address after #, inclusive, that sets the lesson up. */
export function lessonHash(plan: LessonPlan): string {
  const bytes = new TextEncoder().encode(JSON.stringify(plan));
  const text = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  return PREFIX + text.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Why a lesson can't be handed out as a link; null where it can. */
export function lessonFault(plan: LessonPlan): string | null {
  const { task } = plan.lesson;
  if (task.length > LONGEST.task) {
    return `The task has ${task.length} characters; ${LONGEST.task} is the most that a lesson link holds. Shorten it.`;
  }
  if (lessonHash(plan).length <= LONGEST_LINK) return null;
  return `The link would be longer than the ${LONGEST_LINK} characters that it may have: ${plan.forksHz.length} forks are too many for one lesson. Take forks out, or shorten the task.`;
}

/**
 * Reads a lesson out of an address.
 * @returns the plan; null where the address holds no lesson; a message where it is damaged
 */
export function readLessonHash(hash: string): LessonPlan | null | { readonly fault: string } {
  if (!hash.startsWith(PREFIX)) return null;
  const damaged = { fault: 'This lesson link is damaged: ask for it again, and copy all of it.' };
  if (hash.length > LONGEST_LINK) return damaged;
  let value: unknown;
  try {
    const text = atob(hash.slice(PREFIX.length).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0));
    value = JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return damaged;
  }
  const reader = new RecordReader('', value);
  const plan: LessonPlan = {
    forksHz: reader.numbers('forksHz', LONGEST.list, LIMITS.stampedHz),
    ends: reader.choice('ends', ['closed', 'open']),
    diameterM: reader.numberOrNull('diameterM', LIMITS.diameterM),
    travelM: reader.number('travelM', LIMITS.travelM),
    lesson: readLesson(reader.child('lesson')),
  };
  const [fault] = reader.faults.texts;
  if (fault !== undefined) {
    return {
      fault: `This lesson link can’t be used: ${fault} Ask for it again, made anew with the bench.`,
    };
  }
  return plan.forksHz.length > 0 ? plan : damaged;
}

/** A new experiment set up as the lesson says. */
export function lessonExperiment(plan: LessonPlan, id: string, createdAt: string): Experiment {
  const base = newExperiment(id, createdAt);
  const forks = plan.forksHz.map((hz, index) => newFork(`fork-${index + 1}`, hz));
  return {
    ...base,
    title: 'Lesson',
    forks,
    tube: { diameterM: plan.diameterM, travelM: plan.travelM },
    present: { ...base.present, ends: plan.ends },
    lesson: plan.lesson,
  };
}

/** The open experiment's apparatus as a lesson. */
export function planOf(experiment: Experiment, lesson: Lesson): LessonPlan {
  return {
    forksHz: experiment.forks.map((fork) => fork.nominalHz),
    ends: experiment.present.ends,
    diameterM: experiment.tube.diameterM,
    travelM: experiment.tube.travelM,
    lesson,
  };
}
