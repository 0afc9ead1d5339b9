/** A value with the way it came about, so that each step can be undone and redone. */
export interface History<T> {
  readonly present: T;
  /** Oldest first. `step` names what was done next. */
  readonly past: readonly HistoryStep<T>[];
  /** Nearest last. `step` says what would be done again. */
  readonly future: readonly HistoryStep<T>[];
}

export interface HistoryStep<T> {
  readonly value: T;
  readonly step: string;
}

/** Steps kept: more than a lesson's work, and small beside the marks themselves. */
const STEPS_KEPT = 200;

/** A history that starts here. */
export function beginHistory<T>(present: T): History<T> {
  return { present, past: [], future: [] };
}

/** The history with one more step; what was undone before can no longer be redone. */
export function recordStep<T>(history: History<T>, present: T, step: string): History<T> {
  const past = [...history.past, { value: history.present, step }].slice(-STEPS_KEPT);
  return { present, past, future: [] };
}

/** One step back; the same history where there is none. */
export function undoStep<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    present: last.value,
    past: history.past.slice(0, -1),
    future: [...history.future, { value: history.present, step: last.step }],
  };
}

/** One undone step again; the same history where there is none. */
export function redoStep<T>(history: History<T>): History<T> {
  const next = history.future.at(-1);
  if (next === undefined) return history;
  return {
    present: next.value,
    past: [...history.past, { value: history.present, step: next.step }],
    future: history.future.slice(0, -1),
  };
}

/**
 * The history with the same change made to every state of it: for what belongs to something since it was made and
 * only arrived later. `change` gives the same object back where nothing changes; so does this where no state changes.
 */
export function amendHistory<T>(history: History<T>, change: (value: T) => T): History<T> {
  const amend = (step: HistoryStep<T>): HistoryStep<T> => {
    const value = change(step.value);
    return value === step.value ? step : { ...step, value };
  };
  const present = change(history.present);
  const past = history.past.map(amend);
  const future = history.future.map(amend);
  const isSame =
    present === history.present &&
    past.every((step, index) => step === history.past[index]) &&
    future.every((step, index) => step === history.future[index]);
  return isSame ? history : { present, past, future };
}
