import type { Experiment } from './experiment.ts';
import { beginHistory } from './history.ts';
import type { History } from './history.ts';
import type { ExperimentReading, ReadItems } from './readExperiment.ts';
import { readKept } from './readKept.ts';
import { readHistory } from './readHistory.ts';

/** What lies in the store under an experiment's id. */
export interface StoredRecord {
  readonly experiment: unknown;
  /** Null where none was kept. */
  readonly history: unknown;
}

export type StoredReading =
  | { readonly kind: 'history'; readonly history: History<Experiment> }
  | { readonly kind: 'faults'; readonly faults: readonly string[] };

/** Reads a stored experiment with its steps. Never throws, whatever the record holds. */
export function readStored(stored: StoredRecord): StoredReading {
  const readItems: ReadItems = new WeakMap();
  const reading = readRecord(stored.experiment, readItems);
  if (reading.kind === 'faults') return reading;
  return { kind: 'history', history: withSteps(stored.history, reading.experiment, readItems) };
}

/** Reads a stored experiment alone. Never throws, whatever the record holds. */
export function readRecord(record: unknown, readItems?: ReadItems): ExperimentReading {
  try {
    return readKept(record, readItems);
  } catch (error) {
    // A record that even its reader can't take must not hide the others.
    const detail = error instanceof Error ? error.message : String(error);
    return { kind: 'faults', faults: [`This record can’t be read (${detail}).`], outside: [] };
  }
}

/** The state is never given up for its steps. */
function withSteps(steps: unknown, present: Experiment, readItems: ReadItems): History<Experiment> {
  if (steps === null) return beginHistory(present);
  try {
    return readHistory(steps, present, readItems);
  } catch {
    return beginHistory(present);
  }
}
