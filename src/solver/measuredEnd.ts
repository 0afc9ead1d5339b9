import type { Solution } from './solution.ts';

/** Marks that know their end correction worse than to this part of the radius didn't measure it. */
const MOST_UNCERTAIN_RATIO = 0.25;

/**
 * The end correction that an experiment measured: from its marks alone, what is known of mouths left aside.
 * @param radiusM  inside radius of the tube, > 0
 * @returns null where the marks don't give it
 */
export function measuredEnd(
  { endCorrectionOfMarks }: Solution,
  radiusM: number,
): Solution['endCorrectionOfMarks'] {
  if (endCorrectionOfMarks === null) return null;
  return endCorrectionOfMarks.standardUncertaintyM > MOST_UNCERTAIN_RATIO * radiusM
    ? null
    : endCorrectionOfMarks;
}
