import { MarkIndex } from '../marks/markIndex.ts';
import type { Experiment } from '../notebook/experiment.ts';

/** What people call the mark that the solver knows by this key. */
export type NameMark = (key: string) => string;

/** Marks of an experiment by the numbers that the page shows: "Mark 3". */
export function markNames({ marks }: Experiment): NameMark {
  const index = new MarkIndex(marks);
  return (id) => `Mark ${index.numberOf(id)}`;
}
