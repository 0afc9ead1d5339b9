import type { Experiment } from '../notebook/experiment.ts';
import type { Mark } from './mark.ts';

/** What may be changed on a mark once it is there. */
export type MarkChange = Partial<
  Pick<
    Mark,
    | 'forkId'
    | 'placeId'
    | 'ends'
    | 'lengthM'
    | 'otherLengthM'
    | 'evidence'
    | 'order'
    | 'excluded'
    | 'note'
    | 'repeatOf'
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
 * The experiment with one mark changed; the very same experiment where the change leaves all as it is.
 * @throws RangeError if there is no such mark, or the new length isn't above 0
 */
export function editMark(experiment: Experiment, id: string, change: MarkChange): Experiment {
  const before = findMark(experiment.marks, id);
  checkLength(change.lengthM ?? null);
  const names = Object.keys(change) as (keyof MarkChange)[];
  if (names.every((name) => change[name] === before[name])) return experiment;
  return {
    ...experiment,
    marks: experiment.marks.map((mark) => (mark.id === id ? { ...mark, ...change } : mark)),
  };
}

/**
 * The experiment with one mark and its repeats moved to the deleted ones, from where they can come back.
 * @throws RangeError if there is no such mark
 */
export function deleteMark(experiment: Experiment, id: string): Experiment {
  findMark(experiment.marks, id);
  const { marks } = experiment;
  const goes = (mark: Mark): boolean => mark.id === id || repeatedMark(marks, mark)?.id === id;
  return {
    ...experiment,
    marks: marks.filter((mark) => !goes(mark)),
    deletedMarks: [...experiment.deletedMarks, ...marks.filter(goes)],
  };
}

/**
 * The experiment with one deleted mark and its repeats back among the others, at their places in time.
 * @throws RangeError if no such mark was deleted
 */
export function restoreMark(experiment: Experiment, id: string): Experiment {
  findMark(experiment.deletedMarks, id);
  const { deletedMarks } = experiment;
  const comes = (mark: Mark): boolean => mark.id === id || repeatedMark(deletedMarks, mark)?.id === id;
  const marks = [...experiment.marks, ...deletedMarks.filter(comes)].sort((one, other) =>
    one.createdAt < other.createdAt ? -1 : one.createdAt > other.createdAt ? 1 : 0,
  );
  return { ...experiment, marks, deletedMarks: deletedMarks.filter((mark) => !comes(mark)) };
}

/**
 * The mark that this one repeats; null where it stands for itself, as every mark does that has a length of its own or
 * whose repeats lead in a circle. A repeat of a repeat is one of the mark behind both.
 */
export function repeatedMark(marks: readonly Mark[], mark: Mark): Mark | null {
  const passed = new Set([mark.id]);
  let last = mark;
  for (;;) {
    const { repeatOf, lengthM } = last;
    const next =
      lengthM !== null || repeatOf === undefined || repeatOf === null
        ? undefined
        : marks.find((other) => other.id === repeatOf);
    if (next === undefined) return last === mark ? null : last;
    if (passed.has(next.id)) return null;
    passed.add(next.id);
    last = next;
  }
}

/** Marks that stand for themselves, oldest first: each a resonance of its own. */
export function ownMarks(marks: readonly Mark[]): readonly Mark[] {
  return marks.filter((mark) => repeatedMark(marks, mark) === null);
}

/** Repeats of one mark, oldest first. */
export function repeatsOf(marks: readonly Mark[], id: string): readonly Mark[] {
  return marks.filter((mark) => repeatedMark(marks, mark)?.id === id);
}

/**
 * A mark's number, from 1: the one that the page, messages, tables, reports and sound files show. A repeat goes by the
 * number of its mark. 0 where there is no such mark.
 */
export function markNumber(marks: readonly Mark[], id: string): number {
  const found = marks.find((mark) => mark.id === id);
  const own = found === undefined ? undefined : (repeatedMark(marks, found) ?? found);
  return ownMarks(marks).findIndex((mark) => mark === own) + 1;
}

/** The newest older mark of the same fork, ends and place that this one may be a repeat of; null where there is none. */
export function likelyRepeated(marks: readonly Mark[], mark: Mark): Mark | null {
  const older = ownMarks(marks.slice(0, marks.indexOf(mark)));
  const same = older.filter(
    (other) => other.forkId === mark.forkId && other.ends === mark.ends && other.placeId === mark.placeId,
  );
  return same.at(-1) ?? null;
}

/** Marks that still wait for their length, newest first: the order in which lengths are typed. */
export function waitingMarks(experiment: Experiment): readonly Mark[] {
  return ownMarks(experiment.marks)
    .filter((mark) => mark.lengthM === null)
    .reverse();
}

/**
 * The mark whose length is typed next, going from the newest to the oldest.
 * @returns the waiting mark older than `id`, else the newest waiting one, null when none waits
 */
export function nextWaitingMark(experiment: Experiment, id: string): Mark | null {
  const waiting = waitingMarks(experiment).filter((mark) => mark.id !== id);
  const indexOf = (mark: Mark): number => experiment.marks.indexOf(mark);
  const index = experiment.marks.findIndex((mark) => mark.id === id);
  return waiting.find((mark) => indexOf(mark) < index) ?? waiting.at(0) ?? null;
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
