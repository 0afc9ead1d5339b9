import type { Experiment } from './experiment.ts';
import type { Mark, MarkEvidence } from '../marks/mark.ts';

/**
 * A mark of what is measured now, still without a length.
 * @param createdAt  ISO 8601
 */
export function newMark(
  { forkId, placeId, ends }: Experiment['present'],
  id: string,
  createdAt: string,
  evidence: MarkEvidence | null,
): Mark {
  return {
    id,
    createdAt,
    forkId,
    placeId,
    ends,
    lengthM: null,
    otherLengthM: null,
    evidence,
    order: null,
    excluded: false,
    note: '',
  };
}
