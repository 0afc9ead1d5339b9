import { markIndex } from '../notebook/markList.ts';
import type { Experiment } from '../notebook/experiment.ts';
import { words } from './inUse.ts';

/** What people call the mark that the solver knows by this key. */
export type NameMark = (key: string) => string;

/** Marks of an experiment by the numbers that the page shows: "Mark 3". */
export function markNames(experiment: Experiment): NameMark {
  const index = markIndex(experiment);
  return (id) => words.markRow.mark(index.numberOf(id));
}
