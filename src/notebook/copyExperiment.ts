import { LONGEST } from '../limits/longest.ts';
import { beginningOf } from '../limits/texts.ts';
import type { Experiment } from './experiment.ts';
import { amendHistory } from './history.ts';
import type { History } from './history.ts';

/** The same experiment under another id and title, in every step. */
export function copyExperiment(history: History<Experiment>, id: string): History<Experiment> {
  return amendHistory(history, (state) => ({ ...state, id, title: copyTitle(state.title) }));
}

/** The title of a copy; a copy of a copy is counted on. */
function copyTitle(title: string): string {
  const found = /^(.*) \(copy(?: (\d+))?\)$/s.exec(title);
  const end = found === null ? ' (copy)' : ` (copy ${Number(found[2] ?? 1) + 1})`;
  return beginningOf(found?.[1] ?? title, LONGEST.title - end.length) + end;
}
