import { markNumber } from '../marks/markList.ts';
import type { Experiment } from '../notebook/experiment.ts';

/** What people call the mark that the solver knows by this key. */
export type NameMark = (key: string) => string;

/** Marks of an experiment by the numbers that the page shows: "Mark 3". */
export function markNames({ marks }: Experiment): NameMark {
  return (id) => `Mark ${markNumber(marks, id)}`;
}
