import type { Experiment } from '../notebook/experiment.ts';
import type { Mark } from './mark.ts';

/** What may be changed on a mark once it is there. */
export type MarkChange = Partial<
  Pick<
    Mark,
    'forkId' | 'placeId' | 'ends' | 'lengthM' | 'otherLengthM' | 'evidence' | 'order' | 'excluded' | 'note'
  >
>;

/**
 * The experiment with one more mark, at the end of its list.
 * @throws RangeError if a mark with this id is there already, or its length isn't above 0
 */
export function addMark(experiment: Experiment, mark: Mark): Experiment {
  if (experiment.marks.some((other) => other.id === mark.id)) {
    throw new RangeError(`mark.id must be new in the experiment, got ${mark.id}`);
  }
  checkLength(mark.lengthM);
  return { ...experiment, marks: [...experiment.marks, mark] };
}

/**
 * The experiment with one mark changed.
 * @throws RangeError if there is no such mark, or the new length isn't above 0
 */
export function editMark(experiment: Experiment, id: string, change: MarkChange): Experiment {
  findMark(experiment.marks, id);
  checkLength(change.lengthM ?? null);
  return {
    ...experiment,
    marks: experiment.marks.map((mark) => (mark.id === id ? { ...mark, ...change } : mark)),
  };
}

/**
 * The experiment with one mark moved to the deleted ones, from where it can come back.
 * @throws RangeError if there is no such mark
 */
export function deleteMark(experiment: Experiment, id: string): Experiment {
  const deleted = findMark(experiment.marks, id);
  return {
    ...experiment,
    marks: experiment.marks.filter((mark) => mark.id !== id),
    deletedMarks: [...experiment.deletedMarks, deleted],
  };
}

/**
 * The experiment with one deleted mark back among the others, at its place in time.
 * @throws RangeError if no such mark was deleted
 */
export function restoreMark(experiment: Experiment, id: string): Experiment {
  const restored = findMark(experiment.deletedMarks, id);
  const marks = [...experiment.marks, restored].sort((one, other) =>
    one.createdAt < other.createdAt ? -1 : one.createdAt > other.createdAt ? 1 : 0,
  );
  return { ...experiment, marks, deletedMarks: experiment.deletedMarks.filter((mark) => mark.id !== id) };
}

/** Marks that still wait for their length, newest first: the order in which lengths are typed. */
export function waitingMarks(experiment: Experiment): readonly Mark[] {
  return experiment.marks.filter((mark) => mark.lengthM === null).reverse();
}

/**
 * The mark whose length is typed next, going from the newest to the oldest.
 * @returns the waiting mark older than `id`, else the newest waiting one, null when none waits
 */
export function nextWaitingMark(experiment: Experiment, id: string): Mark | null {
  const index = experiment.marks.findIndex((mark) => mark.id === id);
  const older = experiment.marks.slice(0, Math.max(index, 0)).filter((mark) => mark.lengthM === null);
  const waiting = waitingMarks(experiment).filter((mark) => mark.id !== id);
  return older.at(-1) ?? waiting[0] ?? null;
}

function findMark(marks: readonly Mark[], id: string): Mark {
  const mark = marks.find((candidate) => candidate.id === id);
  if (mark === undefined) throw new RangeError(`id must name a mark of this list, got ${id}`);
  return mark;
}

function checkLength(lengthM: number | null): void {
  if (lengthM !== null && !(Number.isFinite(lengthM) && lengthM > 0)) {
    throw new RangeError(`lengthM must be above 0 m, got ${lengthM}`);
  }
}
