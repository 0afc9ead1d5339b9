import type { MouthShape } from '../air/mouth.ts';
import { LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { LONGEST_LINK } from '../limits/sizes.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import { STOPPERS } from './experiment.ts';
import type { Experiment, Lesson, Stopper } from './experiment.ts';
import { newExperiment, newFork } from './newExperiment.ts';
import { readLesson, readMouth } from './readExperiment.ts';
import type { RecordFault } from './recordFault.ts';
import { RecordReader } from './recordReader.ts';

/** What a lesson link carries: apparatus and rules, nothing about a person. */
export interface LessonPlan {
  readonly forksHz: readonly number[];
  readonly ends: ColumnEnds;
  readonly diameterM: number | null;
  readonly otherDiameterM: number | null;
  readonly mouth: MouthShape | null;
  readonly stopper: Stopper;
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

/** Why a lesson can't be handed out as a link. */
export type LessonFault =
  | { readonly code: 'task-too-long'; readonly length: number; readonly longest: number }
  | { readonly code: 'link-too-long'; readonly longest: number; readonly forks: number };

/** Why an address that holds a lesson can't be used: what arrived is not whole, or has a fault. */
export type LinkFault =
  { readonly code: 'damaged' } | { readonly code: 'record'; readonly fault: RecordFault };

/** Null where it can be handed out. */
export function lessonFault(plan: LessonPlan): LessonFault | null {
  const { length } = plan.lesson.task;
  if (length > LONGEST.task) return { code: 'task-too-long', length, longest: LONGEST.task };
  if (lessonHash(plan).length <= LONGEST_LINK) return null;
  return { code: 'link-too-long', longest: LONGEST_LINK, forks: plan.forksHz.length };
}

/**
 * Reads a lesson out of an address.
 * @returns the plan; null where the address holds no lesson
 */
export function readLessonHash(hash: string): LessonPlan | null | { readonly fault: LinkFault } {
  if (!hash.startsWith(PREFIX)) return null;
  const damaged = { fault: { code: 'damaged' } } as const;
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
    // Links made before don't say what follows.
    otherDiameterM:
      reader.raw('otherDiameterM') === undefined
        ? null
        : reader.numberOrNull('otherDiameterM', LIMITS.diameterM),
    mouth: reader.raw('mouth') === undefined ? null : readMouth(reader),
    stopper: reader.raw('stopper') === undefined ? 'piston' : reader.choice('stopper', STOPPERS),
    travelM: reader.number('travelM', LIMITS.travelM),
    lesson: readLesson(reader.child('lesson')),
  };
  const [fault] = reader.faults.all;
  if (fault !== undefined) return { fault: { code: 'record', fault } };
  return plan.forksHz.length > 0 ? plan : damaged;
}

/** A new experiment set up as the lesson says. */
export function lessonExperiment(plan: LessonPlan, id: string, createdAt: string): Experiment {
  const base = newExperiment(id, createdAt);
  const forks = plan.forksHz.map((hz, index) => newFork(`fork-${index + 1}`, hz));
  return {
    ...base,
    origin: { ...base.origin, kind: 'lesson' },
    forks,
    tube: {
      diameterM: plan.diameterM,
      otherDiameterM: plan.otherDiameterM,
      mouth: plan.mouth,
      stopper: plan.stopper,
      travelM: plan.travelM,
    },
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
    otherDiameterM: experiment.tube.otherDiameterM,
    mouth: experiment.tube.mouth,
    stopper: experiment.tube.stopper,
    travelM: experiment.tube.travelM,
    lesson,
  };
}
