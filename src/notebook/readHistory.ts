import type { Experiment } from './experiment.ts';
import { beginHistory } from './history.ts';
import type { History, HistoryStep } from './history.ts';
import type { WriteMended } from './mendRecord.ts';
import type { ReadItems } from './readExperiment.ts';
import { readKept } from './readKept.ts';

/**
 * Checks the stored steps around a checked state. Steps that can't be read are given up together with all that
 * lie beyond them; the state itself is never given up for its history.
 * @param stored  `{ past, future }` as the store keeps it, or anything else
 * @param write  as for `readKept`
 * @param readItems  what was read along with `present`, so that unchanged marks stay shared between the steps
 */
export function readHistory(
  stored: unknown,
  present: Experiment,
  write: WriteMended,
  readItems: ReadItems,
): History<Experiment> {
  if (typeof stored !== 'object' || stored === null) return beginHistory(present);
  const { past, future } = stored as Record<string, unknown>;
  return {
    present,
    past: readSteps(past, present.id, write, readItems),
    future: readSteps(future, present.id, write, readItems),
  };
}

/** The readable steps nearest to the present, which is at the end of the list. */
function readSteps(
  list: unknown,
  id: string,
  write: WriteMended,
  readItems: ReadItems,
): HistoryStep<Experiment>[] {
  if (!Array.isArray(list)) return [];
  const steps: HistoryStep<Experiment>[] = [];
  for (const item of (list as unknown[]).slice().reverse()) {
    if (typeof item !== 'object' || item === null) break;
    const { value, step } = item as Record<string, unknown>;
    const reading = readKept(value, write, readItems);
    if (reading.kind === 'faults' || reading.experiment.id !== id || typeof step !== 'string') break;
    steps.unshift({ value: reading.experiment, step });
  }
  return steps;
}
