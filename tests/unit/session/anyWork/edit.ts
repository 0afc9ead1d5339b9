import type { Experiment } from '../../../../src/notebook/experiment.ts';
import type { Tab } from './benchTabs.ts';
import type { Line } from './line.ts';

/** What must come of something that was done: a step with this name, and this state but for its `changedAt`. */
export interface Outcome {
  readonly step: string;
  readonly state: Experiment;
}

/** Something that a person does to the open experiment, at once. */
export interface Edit {
  readonly words: string;
  /**
   * Does it on the tab's bench.
   * @param before  the state as it is expected to be now; nothing in it is shared with the bench
   * @returns what must come of it, told from `before` alone but for new ids and times: a step more, or the states as
   *   they must be after it; null: nothing changes
   */
  readonly make: (tab: Tab, before: Experiment) => Outcome | Line | null;
}

/** The item that a number picks, whatever it is; undefined where there is none. */
export function picked<T>(list: readonly T[], pick: number): T | undefined {
  return list[pick % Math.max(1, list.length)];
}

/** The list with one item changed. */
export function changed<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  change: Partial<T>,
): T[] {
  return list.map((item) => (item.id === id ? { ...item, ...change } : item));
}
