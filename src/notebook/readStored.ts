import type { Experiment } from './experiment.ts';
import { beginHistory } from './history.ts';
import type { History } from './history.ts';
import type { WriteMended } from './mendRecord.ts';
import type { ExperimentReading, ReadItems } from './readExperiment.ts';
import type { RecordFault } from './recordFault.ts';
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
  | { readonly kind: 'faults'; readonly faults: readonly RecordFault[] };

/** Reads a stored experiment with its steps. Never throws, whatever the record holds. @param write  as for `readKept` */
export function readStored(stored: StoredRecord, write: WriteMended): StoredReading {
  const readItems: ReadItems = new WeakMap();
  const reading = readRecord(stored.experiment, write, readItems);
  if (reading.kind === 'faults') return reading;
  return { kind: 'history', history: withSteps(stored.history, reading.experiment, write, readItems) };
}

/** Reads a stored experiment alone. Never throws, whatever the record holds. @param write  as for `readKept` */
export function readRecord(record: unknown, write: WriteMended, readItems?: ReadItems): ExperimentReading {
  try {
    return readKept(record, write, readItems);
  } catch (error) {
    // A record that even its reader can't take must not hide the others.
    const said = error instanceof Error ? error.message : String(error);
    return { kind: 'faults', faults: [{ code: 'unreadable', said }], outside: [] };
  }
}

/** The state is never given up for its steps. */
function withSteps(
  steps: unknown,
  present: Experiment,
  write: WriteMended,
  readItems: ReadItems,
): History<Experiment> {
  if (steps === null) return beginHistory(present);
  try {
    return readHistory(steps, present, write, readItems);
  } catch {
    return beginHistory(present);
  }
}
