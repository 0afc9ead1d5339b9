import type { Experiment } from './experiment.ts';
import type { Mark } from '../marks/mark.ts';
import { MarkIndex } from '../marks/markIndex.ts';

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
    | 'locatedBy'
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
  const index = new MarkIndex(marks);
  const goes = (mark: Mark): boolean => mark.id === id || index.repeated(mark)?.id === id;
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
  const index = new MarkIndex(deletedMarks);
  const comes = (mark: Mark): boolean => mark.id === id || index.repeated(mark)?.id === id;
  const marks = [...experiment.marks, ...deletedMarks.filter(comes)].sort((one, other) =>
    one.createdAt < other.createdAt ? -1 : one.createdAt > other.createdAt ? 1 : 0,
  );
  return { ...experiment, marks, deletedMarks: deletedMarks.filter((mark) => !comes(mark)) };
}

/** As `MarkIndex.repeated`. */
export function repeatedMark(marks: readonly Mark[], mark: Mark): Mark | null {
  return new MarkIndex(marks).repeated(mark);
}

/** Marks that stand for themselves, oldest first: each a resonance of its own. */
export function ownMarks(marks: readonly Mark[]): readonly Mark[] {
  return new MarkIndex(marks).own;
}

/** Repeats of one mark, oldest first. */
export function repeatsOf(marks: readonly Mark[], id: string): readonly Mark[] {
  const index = new MarkIndex(marks);
  const mark = index.find(id);
  return mark === null ? [] : index.repeatsOf(mark);
}

/**
 * A mark's number, from 1: the one that the page, messages, tables, reports and sound files show. A repeat goes by the
 * number of its mark. 0 where there is no such mark. Whoever asks for many builds one `markIndex`.
 */
export function markNumber(experiment: Pick<Experiment, 'marks' | 'deletedMarks'>, id: string): number {
  return markIndex(experiment).numberOf(id);
}

/** What each mark of an experiment is to the others, and its number: deleted ones keep theirs. */
export function markIndex({ marks, deletedMarks }: Pick<Experiment, 'marks' | 'deletedMarks'>): MarkIndex {
  return new MarkIndex(marks, deletedMarks);
}

/**
 * The newest older mark of the same fork, ends and place that this one may be a repeat of; null where there is none.
 * @param index  of these marks, from whoever asks for many
 */
export function likelyRepeated(
  marks: readonly Mark[],
  mark: Mark,
  index: MarkIndex = new MarkIndex(marks),
): Mark | null {
  const older = marks.slice(0, Math.max(marks.indexOf(mark), 0));
  return older.findLast((other) => isSameSetup(other, mark) && index.repeated(other) === null) ?? null;
}

/** As many marks are offered to join one with: a longer list of choices is no help. */
const MOST_OFFERED = 30;

/** Marks of the same fork, ends and place that one may be joined with, newest first. @param index  of all marks */
export function joinable(index: MarkIndex, mark: Mark): readonly Mark[] {
  return index.own
    .filter((other) => other.id !== mark.id && isSameSetup(other, mark))
    .slice(-MOST_OFFERED)
    .reverse();
}

/** What a mark was made with: fork, ends of the column, place. */
export type Setup = Pick<Mark, 'forkId' | 'placeId' | 'ends'>;

export const isSameSetup = (a: Setup, b: Setup): boolean =>
  a.forkId === b.forkId && a.ends === b.ends && a.placeId === b.placeId;

/** Marks that stand for themselves and were made with this setup, oldest first. */
export function marksOfSetup({ marks }: Pick<Experiment, 'marks'>, setup: Setup): readonly Mark[] {
  return ownMarks(marks).filter((mark) => isSameSetup(mark, setup));
}

/**
 * The experiment with another setup for these marks; what repeats them goes along.
 * @throws RangeError if there is no such mark
 */
export function changeSetup(experiment: Experiment, ids: readonly string[], to: Partial<Setup>): Experiment {
  const { marks } = experiment;
  const all = ids.flatMap((id) => [id, ...repeatsOf(marks, id).map((repeat) => repeat.id)]);
  return all.reduce((changed, id) => editMark(changed, id, to), experiment);
}

/** Marks that still wait for their length, newest first: the order in which lengths are typed. Left out, one doesn't wait. */
export function waitingMarks(experiment: Experiment): readonly Mark[] {
  const open = experiment.marks.filter((mark) => mark.lengthM === null && !mark.excluded);
  if (open.length === 0) return [];
  const index = new MarkIndex(experiment.marks);
  return open.filter((mark) => index.repeated(mark) === null).reverse();
}

/**
 * The mark whose length is typed next, going from the newest to the oldest.
 * @returns the waiting mark older than `id`, else the newest waiting one, null when none waits
 */
export function nextWaitingMark(experiment: Experiment, id: string): Mark | null {
  const waiting = waitingMarks(experiment).filter((mark) => mark.id !== id);
  const at = new Map(experiment.marks.map((mark, index) => [mark.id, index]));
  const index = at.get(id) ?? -1;
  return waiting.find((mark) => (at.get(mark.id) ?? -1) < index) ?? waiting.at(0) ?? null;
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
