import type { Mark } from '../marks/mark.ts';
import { MarkIndex } from '../marks/markIndex.ts';
import type { Experiment } from './experiment.ts';
import { editMark } from './markList.ts';

/** What a mark was made with: fork, ends of the column, place. */
export type Setup = Pick<Mark, 'forkId' | 'placeId' | 'ends'>;

export function isOfSetup(mark: Setup, setup: Setup): boolean {
  return mark.forkId === setup.forkId && mark.ends === setup.ends && mark.placeId === setup.placeId;
}

/** Marks that stand for themselves and were made with this setup, oldest first. */
export function marksOfSetup({ marks }: Experiment, setup: Setup): readonly Mark[] {
  return new MarkIndex(marks).own.filter((mark) => isOfSetup(mark, setup));
}

/**
 * The experiment with other setups for these marks; what repeats them goes along.
 * @throws RangeError if there is no such mark
 */
export function changeSetup(experiment: Experiment, ids: readonly string[], to: Partial<Setup>): Experiment {
  const index = new MarkIndex(experiment.marks);
  const all = ids.flatMap((id) => {
    const mark = index.find(id);
    return [id, ...(mark === null ? [] : index.repeatsOf(mark).map((repeat) => repeat.id))];
  });
  return all.reduce((changed, id) => editMark(changed, id, to), experiment);
}
