import type { Experiment, Lesson } from './experiment.ts';

/** Whether a lesson keeps anything back. */
export function keepsBack(lesson: Lesson | undefined): lesson is Lesson {
  return lesson !== undefined && (lesson.hideExpected || lesson.hideTheory || lesson.hideTruth);
}

/**
 * An experiment that is begun or brought in while a lesson is open: what the lesson keeps back stays back in it, too. It
 * keeps its own task; a lesson that keeps nothing back leaves it as it is.
 */
export function underLesson(experiment: Experiment, open: Lesson | undefined): Experiment {
  if (!keepsBack(open)) return experiment;
  const own = experiment.lesson;
  return {
    ...experiment,
    lesson: {
      ...open,
      task: own === undefined ? open.task : own.task,
      hideExpected: open.hideExpected || own?.hideExpected === true,
      hideTheory: open.hideTheory || own?.hideTheory === true,
      hideTruth: open.hideTruth || own?.hideTruth === true,
    },
  };
}

/**
 * What a picture of the column may show of where resonances are. Before anything was measured that is theory's: its
 * places give its speed away. A standing wave's nodes are such places, too.
 * @param basis  what the places rest on
 * @param isSounding  whether the column is heard: the wave of what was measured may then be seen in it
 */
export function shownPlaces(
  { lesson }: Experiment,
  basis: 'measured' | 'theory',
  isSounding: boolean,
): { readonly expected: boolean; readonly wave: boolean } {
  const isTheory = basis === 'theory' && lesson?.hideTheory === true;
  const isWithheld = lesson?.hideExpected === true;
  return {
    expected: !isWithheld && !isTheory,
    wave: !isTheory && (!isWithheld || (isSounding && basis === 'measured')),
  };
}
