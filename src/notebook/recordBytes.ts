import type { Mark } from '../marks/mark.ts';
import type { Experiment, Fork, Place } from './experiment.ts';

const encoder = new TextEncoder();

/** Bytes of marks that were measured before: a mark never changes, and most stay from state to state. */
export type KnownBytes = WeakMap<Mark, number>;

/** Bytes of an experiment's JSON without blanks. @param known  shared between the states of one experiment */
export function recordBytes(experiment: Experiment, known: KnownBytes = new WeakMap()): number {
  const { marks, deletedMarks } = experiment;
  const frame = jsonBytes({ ...experiment, marks: [], deletedMarks: [] });
  return frame + marks.concat(deletedMarks).reduce((sum, mark) => sum + bytesOf(mark, known), 0);
}

/** Bytes that an item adds to its list, the comma included. */
export function itemBytes(item: Mark | Fork | Place): number {
  return jsonBytes(item) + 1;
}

function bytesOf(mark: Mark, known: KnownBytes): number {
  const there = known.get(mark);
  if (there !== undefined) return there;
  const bytes = itemBytes(mark);
  known.set(mark, bytes);
  return bytes;
}

function jsonBytes(value: unknown): number {
  return encoder.encode(JSON.stringify(value)).length;
}
