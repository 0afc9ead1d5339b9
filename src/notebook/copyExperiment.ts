import type { Experiment } from './experiment.ts';
import { amendHistory } from './history.ts';
import type { History } from './history.ts';

/** The same experiment under another id, as a copy, in every step. */
export function copyExperiment(history: History<Experiment>, id: string): History<Experiment> {
  return amendHistory(history, (state) => ({
    ...state,
    id,
    origin: { ...state.origin, copy: state.origin.copy + 1 },
  }));
}
