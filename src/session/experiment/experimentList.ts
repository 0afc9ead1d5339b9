import type { StoredExperiment } from '../../notebook/notebookStore.ts';
import { readRecord } from '../../notebook/readStored.ts';
import type { WriteMended } from '../../notebook/mendRecord.ts';
import type { Titled } from '../../notebook/experiment.ts';
import type { RecordFault } from '../../notebook/recordFault.ts';

/** One line of the list of experiments. */
export interface ExperimentEntry {
  readonly id: string;
  /** Null where the record can't be read. */
  readonly titled: Titled | null;
  /** ISO 8601; empty where the record can't be read. */
  readonly changedAt: string;
  readonly markCount: number;
  readonly placeCount: number;
  readonly isDeleted: boolean;
  /** What is wrong with a record that can't be read; null where it can. */
  readonly fault: RecordFault | null;
  /** The record as it lies in the store. */
  readonly record: unknown;
}

/** The notebook's records as a list, the last changed first, those that can't be read at its end. @param write  as for `readKept` */
export function experimentList(
  stored: readonly StoredExperiment[],
  write: WriteMended,
): readonly ExperimentEntry[] {
  return stored
    .map((one) => entryOf(one, write))
    .sort((one, other) => (one.changedAt > other.changedAt ? -1 : 1));
}

function entryOf(
  { id, experiment: record, deletedAt }: StoredExperiment,
  write: WriteMended,
): ExperimentEntry {
  const reading = readRecord(record, write);
  const shared = { id, isDeleted: deletedAt !== null, record };
  if (reading.kind === 'faults') {
    const fault = reading.faults.at(0) ?? null;
    return { ...shared, titled: null, changedAt: '', markCount: 0, placeCount: 0, fault };
  }
  const { experiment } = reading;
  const { changedAt, marks, places } = experiment;
  return {
    ...shared,
    titled: experiment,
    changedAt,
    markCount: marks.length,
    placeCount: places.length,
    fault: null,
  };
}
