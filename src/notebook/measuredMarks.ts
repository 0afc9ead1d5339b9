import { hasColumn } from '../marks/columnOfMark.ts';
import type { Mark } from '../marks/mark.ts';
import type { Experiment } from './experiment.ts';

/** A mark whose length was read. */
export type MeasuredMark = Mark & { readonly lengthM: number };

/** Marks with a length that leaves a column once the zero offset is off; what is kept never lacks one. */
export function measuredMarks(experiment: Experiment): readonly MeasuredMark[] {
  const { zeroOffsetM } = experiment.rule;
  return experiment.marks.filter(
    (mark): mark is MeasuredMark => mark.lengthM !== null && hasColumn(mark.lengthM, zeroOffsetM),
  );
}
