import type { Experiment } from './experiment.ts';
import { amendHistory } from './history.ts';
import type { History } from './history.ts';

/** The same experiment under another id and title, in every step. */
export function copyExperiment(history: History<Experiment>, id: string): History<Experiment> {
  return amendHistory(history, (state) => ({ ...state, id, title: copyTitle(state.title) }));
}

/** The title of a copy; a copy of a copy is counted on. */
function copyTitle(title: string): string {
  const found = /^(.*) \(copy(?: (\d+))?\)$/.exec(title);
  return found === null ? `${title} (copy)` : `${found[1]} (copy ${Number(found[2] ?? 1) + 1})`;
}
