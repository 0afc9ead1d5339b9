import { LONGEST } from '../limits/longest.ts';
import { beginningOf } from '../limits/texts.ts';
import type { Experiment } from './experiment.ts';

/** A place's name; with its number where another place has the same name, so that the two stay apart. */
export function placeLabel(experiment: Experiment, placeId: string): string {
  const index = experiment.places.findIndex((place) => place.id === placeId);
  const name = experiment.places[index]?.name.trim() ?? '';
  const isShared = experiment.places.filter((place) => place.name.trim() === name).length > 1;
  return labelOf(name, index, isShared);
}

function labelOf(name: string, index: number, isShared: boolean): string {
  if (name !== '' && !isShared) return name;
  const number = ` ${index + 1}`;
  return `${beginningOf(name, LONGEST.name - number.length)}${number}`.trim();
}

/** The names of all places by their ids, as `placeLabel` gives them: for whoever needs many. */
export function placeLabels({ places }: Experiment): ReadonlyMap<string, string> {
  const names = places.map((place) => place.name.trim());
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const labels = new Map<string, string>();
  for (const [index, { id }] of places.entries()) {
    const name = names[index] ?? '';
    if (!labels.has(id)) labels.set(id, labelOf(name, index, (counts.get(name) ?? 0) > 1));
  }
  return labels;
}
