import { wellFormed } from '../limits/texts.ts';
import type { Experiment } from './experiment.ts';

/** The experiment with every text that people write made well-formed; the very same one where all are. */
export function wellFormedTexts(experiment: Experiment): Experiment {
  const { title, note, group, className, lesson } = experiment;
  const places = mapChanged(experiment.places, (place) => {
    const name = wellFormed(place.name);
    return name === place.name ? place : { ...place, name };
  });
  const marks = mapChanged(experiment.marks, (mark) => {
    const markNote = wellFormed(mark.note);
    return markNote === mark.note ? mark : { ...mark, note: markNote };
  });
  const tidy = {
    title: wellFormed(title),
    note: wellFormed(note),
    group: wellFormed(group),
    className: wellFormed(className),
  };
  const task = wellFormed(lesson?.task ?? '');
  const isTidy =
    tidy.title === title && tidy.note === note && tidy.group === group && tidy.className === className;
  if (isTidy && task === (lesson?.task ?? '') && places === experiment.places && marks === experiment.marks)
    return experiment;
  return {
    ...experiment,
    ...tidy,
    places,
    marks,
    ...(lesson === undefined ? {} : { lesson: { ...lesson, task } }),
  };
}

/** The same list where nothing in it changes. */
function mapChanged<T>(list: readonly T[], change: (item: T) => T): readonly T[] {
  const changed = list.map(change);
  return changed.every((item, index) => item === list[index]) ? list : changed;
}
