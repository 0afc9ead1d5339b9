import type { Experiment } from '../../notebook/experiment.ts';

/** How many marks a question is about. @param about  an experiment, or the records of several */
export function sizeOf(about: Experiment | readonly unknown[]): number {
  if ('marks' in about) return about.marks.length;
  return about.reduce((sum: number, record) => {
    const marks = (record as { marks?: unknown } | null)?.marks;
    return sum + (Array.isArray(marks) ? marks.length : 0);
  }, 0);
}

/** The experiment without what no answer depends on: traces, reasons, notes, deleted marks. It is sent quickly. */
export function bareExperiment(experiment: Experiment): Experiment {
  return {
    ...experiment,
    note: '',
    marks: experiment.marks.map(({ evidence, ...mark }) => ({
      ...mark,
      evidence: evidence === null ? null : { ...evidence, reason: '', trace: null },
      note: '',
    })),
    deletedMarks: [],
  };
}
