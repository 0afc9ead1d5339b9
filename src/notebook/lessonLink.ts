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
const LONGEST = 8000;

/** The part of the address after #, inclusive, that sets the lesson up. */
export function lessonHash(plan: LessonPlan): string {
  const bytes = new TextEncoder().encode(JSON.stringify(plan));
  const text = btoa(String.fromCharCode(...bytes));
  return PREFIX + text.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/**
 * Reads a lesson out of an address.
 * @returns the plan; null where the address holds no lesson; a message where it is damaged
 */
export function readLessonHash(hash: string): LessonPlan | null | { readonly fault: string } {
  if (!hash.startsWith(PREFIX)) return null;
  const damaged = { fault: 'This lesson link is damaged: ask for it again, and copy all of it.' };
  if (hash.length > LONGEST) return damaged;
  let value: unknown;
  try {
    const text = atob(hash.slice(PREFIX.length).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0));
    value = JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return damaged;
  }
  const reader = new RecordReader('', value, []);
  const forks = reader.raw('forksHz');
  const plan: LessonPlan = {
    forksHz: Array.isArray(forks) ? forks.filter((hz): hz is number => typeof hz === 'number') : [],
    ends: reader.choice('ends', ['closed', 'open']),
    diameterM: reader.numberOrNull('diameterM', 0.002, 0.5),
    travelM: reader.number('travelM', 0.1, 5),
    lesson: readLesson(reader.child('lesson')),
  };
  const areForksGood = plan.forksHz.length > 0 && plan.forksHz.every((hz) => hz >= 100 && hz <= 2100);
  return reader.faults.length === 0 && areForksGood ? plan : damaged;
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
