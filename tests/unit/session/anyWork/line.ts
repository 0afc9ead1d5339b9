import type { Experiment } from '../../../../src/notebook/experiment.ts';
import type { History } from '../../../../src/notebook/history.ts';

export interface LineStep {
  readonly value: Experiment;
  readonly step: string;
}

/** An experiment as whoever works on it expects it to be: a plain list of the states it went through. */
export interface Line {
  readonly past: readonly LineStep[];
  readonly present: Experiment;
  /** Nearest last. */
  readonly future: readonly LineStep[];
}

/** The same as `History`, in objects of its own: what the bench does to its objects later doesn't reach them. */
export function lineOf(history: History<Experiment>): Line {
  return structuredClone({ past: history.past, present: history.present, future: history.future });
}

/** One more state; what was undone can't be redone any more. */
export function stepped(line: Line, step: string, value: Experiment): Line {
  return {
    past: [...line.past, { value: line.present, step }],
    present: structuredClone(value),
    future: [],
  };
}

export function undone({ past, present, future }: Line): Line {
  const last = past.at(-1);
  if (last === undefined) return { past, present, future };
  return {
    past: past.slice(0, -1),
    present: last.value,
    future: [...future, { value: present, step: last.step }],
  };
}

export function redone({ past, present, future }: Line): Line {
  const next = future.at(-1);
  if (next === undefined) return { past, present, future };
  return {
    past: [...past, { value: present, step: next.step }],
    present: next.value,
    future: future.slice(0, -1),
  };
}

/** The same change in every state. */
export function everywhere({ past, present, future }: Line, change: (value: Experiment) => Experiment): Line {
  const each = ({ value, step }: LineStep): LineStep => ({ value: change(value), step });
  return { past: past.map(each), present: change(present), future: future.map(each) };
}
